package dev.fillplane.flatness;

import java.util.Collection;
import java.util.Collections;

/** Whether a floor is flat enough, given how well it is known; the best first. */
public enum Passes {
  WITHIN,
  UNCLEAR,
  OVER;

  /**
   * The verdict over several figures: the worst where all must be kept, the best where one will do.
   *
   * @param verdicts at least one
   */
  public static Passes together(Collection<Passes> verdicts, Enough enough) {
    return enough == Enough.ALL ? Collections.max(verdicts) : Collections.min(verdicts);
  }
}
