package dev.fillplane.flatness;

import java.util.List;

/**
 * The floor under a straightedge.
 *
 * @param before as it is
 * @param limit the main figure of the covering
 * @param after as it will probably be
 * @param gaps of the floor as it is over the limit, the worst first, at most 20
 */
public record FlatnessSummary(
    FloorGap before, FlatnessLimit limit, FloorGap after, List<ListedGap> gaps) {

  static final int MOST_GAPS = 20;

  /** Copies the list. */
  public FlatnessSummary {
    gaps = List.copyOf(gaps);
  }

  /** The same of a survey too thin to see every gap. */
  public FlatnessSummary unseen() {
    return new FlatnessSummary(before.unseen(), limit, after, gaps);
  }
}
