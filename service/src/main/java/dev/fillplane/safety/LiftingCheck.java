package dev.fillplane.safety;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Remark;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A lift, judged on its own.
 *
 * @param origin where the load is taken up
 * @param destination where it is set down, if it is set down with care
 * @param index the higher of the two; left out where one end allows no lift at all
 * @param applies whether the equation holds for this lift; where not, it asks too little
 * @param whyNot what stands against it
 * @param alternatives that lower the index, the lowest first
 * @param basis where the equation comes from
 * @param warnings what is too heavy, and what was not told
 */
public record LiftingCheck(
    LiftingPoint origin,
    Optional<LiftingPoint> destination,
    OptionalDouble index,
    boolean applies,
    List<Remark> whyNot,
    List<LiftingAlternative> alternatives,
    String basis,
    List<Finding> warnings) {

  /** Copies the lists. */
  public LiftingCheck {
    whyNot = List.copyOf(whyNot);
    alternatives = List.copyOf(alternatives);
    warnings = List.copyOf(warnings);
  }
}
