package dev.fillplane.screed;

import dev.fillplane.room.Position;
import java.util.List;

/** A straight rail that the screed runs on. */
public record Rail(int id, String bay, Position from, Position to, List<Station> stations) {

  /** Copies the stations. */
  public Rail {
    stations = List.copyOf(stations);
  }
}
