package dev.fillplane.render;

import dev.fillplane.plan.Computed;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.plan.Planner;
import dev.fillplane.pour.Crew;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Room;
import dev.fillplane.survey.KnownPoint;
import dev.fillplane.survey.Survey;
import dev.fillplane.target.TargetShape;
import dev.fillplane.target.TargetWish;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;

/** Whole plans of invented floors. */
final class PlannedFloors {

  static final Computed COMPUTED = new Computed("9.8.7", "0123456789abcdef", List.of("a-method"));

  /** Waves of up to 5.5 mm. */
  static final DoubleBinaryOperator WAVES =
      (x, y) -> 0.001 * (3 * Math.sin(0.9 * x + 0.4) + 2.5 * Math.cos(0.8 * y - 0.3 * x));

  private PlannedFloors() {}

  static Planned of(String name, List<Room> rooms, UnitSystem units) {
    return of(name, rooms, units, WAVES, null);
  }

  /** A floor that falls so much that rails carry the screed. */
  static Planned deep(UnitSystem units) {
    return of("deep", Floors.twoRoomsAndPassage(), units, (x, y) -> -0.0025 * x, null);
  }

  /** A floor above its target. */
  static Planned dry() {
    TargetWish target =
        new TargetWish(
            TargetShape.GIVEN,
            OptionalDouble.of(-0.5),
            null,
            null,
            OptionalDouble.empty(),
            null,
            null,
            null,
            Optional.empty(),
            null,
            null);
    return of("dry", Floors.closet(), UnitSystem.METRIC, WAVES, target);
  }

  /** The same with a crew that starts at a time by the clock. */
  static Planned startingAt(String time, Planned planned) {
    PlanRequest told = planned.request();
    OptionalDouble none = OptionalDouble.empty();
    Crew crew =
        new Crew(4, 2, null, null, null, null, null, null, none, null, null, Optional.of(time));
    return planned(
        told.reference().orElseThrow(), told.rooms(), told.units(), told.survey(), null, crew);
  }

  static Planned of(
      String name,
      List<Room> rooms,
      UnitSystem units,
      DoubleBinaryOperator floor,
      TargetWish target) {
    return planned(name, rooms, units, survey(rooms, floor), target, Crew.of(4, 2, null, null));
  }

  private static Planned planned(
      String name,
      List<Room> rooms,
      UnitSystem units,
      Survey survey,
      TargetWish target,
      Crew crew) {
    PlanRequest request =
        new PlanRequest(
            units,
            Optional.of(name),
            rooms,
            survey,
            null,
            target,
            null,
            Optional.empty(),
            crew,
            null,
            Optional.empty(),
            OptionalDouble.empty(),
            null,
            null,
            null,
            null,
            null,
            null);
    return new Planned(request, Planner.plan(request, COMPUTED));
  }

  private static Survey survey(List<Room> rooms, DoubleBinaryOperator floor) {
    List<KnownPoint> points = new ArrayList<>();
    for (Room room : rooms) {
      var box = room.outline().polygon().getEnvelopeInternal();
      double spacing = Math.max(0.4, Math.min(box.getWidth(), box.getHeight()) / 2.5);
      for (double x = box.getMinX() + 0.2; x < box.getMaxX(); x += spacing) {
        for (double y = box.getMinY() + 0.2; y < box.getMaxY(); y += spacing) {
          String name = "p" + (points.size() + 1);
          points.add(new KnownPoint(name, x, y, floor.applyAsDouble(x, y)));
        }
      }
    }
    return new Survey(
        null,
        null,
        points,
        Optional.empty(),
        null,
        null,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        null);
  }
}
