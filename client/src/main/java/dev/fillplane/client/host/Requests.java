package dev.fillplane.client.host;

import dev.fillplane.client.generated.model.OpeningKind;
import dev.fillplane.client.generated.model.Outline;
import dev.fillplane.client.generated.model.PlanRequest;
import dev.fillplane.client.generated.model.Setup;
import dev.fillplane.client.generated.model.Survey;
import dev.fillplane.client.generated.model.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a host tells of a unit as a request of the service. */
final class Requests {
  private Requests() {}

  static PlanRequest of(Unit unit) {
    PlanRequest request =
        new PlanRequest()
            .units(units(unit.measures()))
            .reference(unit.reference())
            .rooms(unit.rooms().stream().map(Requests::room).toList())
            .survey(new Survey().setups(setups(unit.readings())));
    unit.details().accept(request);
    return request;
  }

  static UnitSystem units(Measures measures) {
    return measures == Measures.METRIC ? UnitSystem.METRIC : UnitSystem.US;
  }

  private static dev.fillplane.client.generated.model.Room room(Room room) {
    List<List<Double>> ring = new ArrayList<>();
    room.corners().forEach(corner -> ring.add(position(corner)));
    if (!ring.isEmpty()) {
      ring.add(ring.get(0));
    }
    return new dev.fillplane.client.generated.model.Room()
        .id(room.id())
        .outline(new Outline().coordinates(List.of(ring)))
        .openings(room.openings().stream().map(Requests::opening).toList());
  }

  private static dev.fillplane.client.generated.model.Opening opening(Opening opening) {
    var told =
        new dev.fillplane.client.generated.model.Opening()
            .id(opening.id())
            .from(position(opening.from()))
            .to(position(opening.to()))
            .kind(opening.into().isPresent() ? OpeningKind.DOORWAY : OpeningKind.EXIT);
    opening.into().ifPresent(told::into);
    return told;
  }

  private static List<Double> position(Corner corner) {
    return List.of(corner.x(), corner.y());
  }

  /** Readings by setup, in the order in which the setups come. */
  private static List<Setup> setups(List<Reading> readings) {
    Map<String, Setup> setups = new LinkedHashMap<>();
    for (Reading reading : readings) {
      setups
          .computeIfAbsent(reading.setup(), id -> new Setup().id(id))
          .addReadingsItem(
              new dev.fillplane.client.generated.model.Reading()
                  .point(reading.point())
                  .x(reading.x())
                  .y(reading.y())
                  .reading(reading.down()));
    }
    return List.copyOf(setups.values());
  }
}
