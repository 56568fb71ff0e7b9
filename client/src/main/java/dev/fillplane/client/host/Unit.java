package dev.fillplane.client.host;

import dev.fillplane.client.generated.model.PlanRequest;
import java.util.List;
import java.util.function.Consumer;

/**
 * The rooms that are poured together, with their readings.
 *
 * @param reference the host's name of the unit, handed back; of its own in a run
 * @param measures the units of all that is told and answered
 * @param rooms the rooms
 * @param readings the readings
 * @param details what else the host knows (material, weather, crew, covering), set on the request;
 *     what nobody tells is assumed, with a warning
 */
public record Unit(
    String reference,
    Measures measures,
    List<Room> rooms,
    List<Reading> readings,
    Consumer<PlanRequest> details) {

  /** Copies the lists. */
  public Unit {
    rooms = List.copyOf(rooms);
    readings = List.copyOf(readings);
  }

  /** A unit of which no more is known. */
  public Unit(String reference, Measures measures, List<Room> rooms, List<Reading> readings) {
    this(reference, measures, rooms, readings, request -> {});
  }

  /** The same with more told. */
  public Unit with(Consumer<PlanRequest> more) {
    return new Unit(reference, measures, rooms, readings, details.andThen(more));
  }
}
