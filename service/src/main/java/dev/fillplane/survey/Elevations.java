package dev.fillplane.survey;

import java.util.List;
import java.util.Optional;

/**
 * The survey after its adjustment.
 *
 * @param points every point, in the order of its first reading
 * @param setups every setup, in the order of the request
 * @param misclosure the largest loop error, where the network has a loop
 * @param suspects points that do not fit, the worst first
 */
public record Elevations(
    List<AdjustedPoint> points,
    List<AdjustedSetup> setups,
    Optional<Misclosure> misclosure,
    List<Suspect> suspects) {

  /** Copies the lists. */
  public Elevations {
    points = List.copyOf(points);
    setups = List.copyOf(setups);
    suspects = List.copyOf(suspects);
  }
}
