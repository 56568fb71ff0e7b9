package dev.fillplane.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What lowers the index of a lift: bags of half the mass, a stand at 75 cm, feet that turn, a
 * second person.
 *
 * <p>Two people together can lift two thirds of what both can alone (HSE L23, from memory).
 */
final class LiftingAlternatives {

  /** Height of the stand. */
  static final double STAND = 0.75;

  private static final double SHARE_OF_TEAM = 2.0 / 3;

  /** An index is lower if it is so by more than the last digits of a conversion. */
  private static final double LESS = 1 - 1e-9;

  private final LiftingTask task;

  private LiftingAlternatives(LiftingTask task) {
    this.task = task;
  }

  /** Those with a lower index than {@code task}, the lowest first. */
  static List<LiftingAlternative> of(LiftingTask task) {
    double now = order(LiftingEquation.of(task).worst().index());
    return new LiftingAlternatives(task)
        .all().stream()
            .filter(other -> order(other.index()) < now * LESS)
            .sorted(Comparator.comparingDouble(other -> order(other.index())))
            .toList();
  }

  private List<LiftingAlternative> all() {
    List<LiftingAlternative> all = new ArrayList<>();
    all.add(
        alone(
            LiftingWay.SMALLER_BAG,
            changed(task.mass() / 2, 2 * task.liftsPerMinute(), task.origin())));
    all.add(inPairs());
    if (task.origin().vertical() < STAND) {
      HandPosition stand = at(task.origin(), STAND, task.origin().asymmetry());
      HandPosition straight = at(task.origin(), STAND, 0);
      HandPosition end = at(task.destination(), task.destination().vertical(), 0);
      all.add(alone(LiftingWay.STAND, changed(task.mass(), task.liftsPerMinute(), stand)));
      all.add(
          alone(
              LiftingWay.STAND_AND_TURN,
              changed(task.mass(), task.liftsPerMinute(), straight, end)));
    }
    return all;
  }

  private static HandPosition at(HandPosition hands, double vertical, double asymmetry) {
    return new HandPosition(hands.horizontal(), vertical, asymmetry);
  }

  private LiftingTask changed(double mass, double liftsPerMinute, HandPosition origin) {
    return changed(mass, liftsPerMinute, origin, task.destination());
  }

  private LiftingTask changed(
      double mass, double liftsPerMinute, HandPosition origin, HandPosition destination) {
    return new LiftingTask(
        mass, origin, destination, liftsPerMinute, task.hours(), task.coupling(), task.control());
  }

  private static LiftingAlternative alone(LiftingWay way, LiftingTask task) {
    LiftingPoint worst = LiftingEquation.of(task).worst();
    return new LiftingAlternative(
        way, task.mass(), task.liftsPerMinute(), worst.recommendedMass(), worst.index());
  }

  private LiftingAlternative inPairs() {
    double half = task.mass() / 2;
    double recommended = SHARE_OF_TEAM * LiftingEquation.of(task).worst().recommendedMass();
    return new LiftingAlternative(
        LiftingWay.TWO_PEOPLE,
        half,
        task.liftsPerMinute(),
        recommended,
        recommended > 0 ? OptionalDouble.of(half / recommended) : OptionalDouble.empty());
  }

  private static double order(OptionalDouble index) {
    return index.orElse(Double.POSITIVE_INFINITY);
  }
}
