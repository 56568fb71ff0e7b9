package dev.fillplane.survey;

import java.util.List;
import java.util.Optional;

/**
 * The survey after its adjustment.
 *
 * @param points every point, in the order of its first reading
 * @param setups every setup, in the order of the request
 * @param misclosure the largest loop error, where the network has a loop
 * @param loops what is left over round the loops of the network, at most the worst 50
 * @param ties how each two setups that share points agree, at most the worst 200
 * @param suspects points that do not fit, the worst first
 */
public record Elevations(
    List<AdjustedPoint> points,
    List<AdjustedSetup> setups,
    Optional<Misclosure> misclosure,
    List<Loop> loops,
    List<Tie> ties,
    List<Suspect> suspects) {

  /** Copies the lists. */
  public Elevations {
    points = List.copyOf(points);
    setups = List.copyOf(setups);
    loops = List.copyOf(loops);
    ties = List.copyOf(ties);
    suspects = List.copyOf(suspects);
  }

  /** Elevations that no setup was adjusted for. */
  public static Elevations of(List<AdjustedPoint> points, List<Suspect> suspects) {
    return new Elevations(points, List.of(), Optional.empty(), List.of(), List.of(), suspects);
  }

  /** The same with other suspects. */
  public Elevations withSuspects(List<Suspect> others) {
    return new Elevations(points, setups, misclosure, loops, ties, others);
  }

  /** The same without its points. */
  public Elevations withoutPoints() {
    return new Elevations(List.of(), setups, misclosure, loops, ties, suspects);
  }
}
