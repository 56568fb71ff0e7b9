package dev.fillplane.flatness;

import java.util.List;
import java.util.Optional;

/**
 * What a straightedge met on a floor.
 *
 * @param largest gap, if any
 * @param over the gaps over the limit, the worst first, each hollow once, at most 100
 * @param places of the edge, counted
 */
public record EdgeWalk(Optional<Gap> largest, List<Gap> over, Placements places) {

  /** Copies the list. */
  public EdgeWalk {
    over = List.copyOf(over);
  }
}
