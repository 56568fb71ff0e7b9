package dev.fillplane.screed;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.room.Position;
import java.util.List;
import java.util.OptionalInt;

/**
 * A straight line that the screed runs on.
 *
 * @param id its number, from 1
 * @param bay the bay it stands in
 * @param support what it stands by
 * @param from where the travel meets it first
 * @param to where the travel leaves it
 * @param ripWidth width to rip it to from sheet stock: as high as the shallowest place under it
 * @param out its place among those of the bay that come out, from 1; empty for an edge
 * @param stations where its height is set
 */
public record Rail(
    int id,
    String bay,
    RailSupport support,
    Position from,
    Position to,
    @Measured(Dimension.HEIGHT) double ripWidth,
    OptionalInt out,
    List<Station> stations) {

  /** Copies the stations. */
  public Rail {
    stations = List.copyOf(stations);
  }

  Rail comingOut(int place) {
    return new Rail(id, bay, support, from, to, ripWidth, OptionalInt.of(place), stations);
  }
}
