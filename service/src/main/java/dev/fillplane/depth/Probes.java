package dev.fillplane.depth;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.room.Room;
import dev.fillplane.surface.Surface;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;

/** Answers the places where the caller wants numbers, from the surface itself and no grid. */
public final class Probes {

  private Probes() {}

  /**
   * One probe for each wish, in their order. One that lies in no room is answered with a warning.
   *
   * @param place of the wishes
   */
  public static List<Probe> of(
      List<ProbeWish> wishes,
      Surface surface,
      DepthField field,
      List<Room> rooms,
      Place place,
      Findings findings) {
    List<Probe> probes = new ArrayList<>();
    for (int i = 0; i < wishes.size(); i++) {
      ProbeWish wish = wishes.get(i);
      if (rooms.stream().noneMatch(room -> covers(room, wish))) {
        findings.warning("probe-outside", place.at(i), "probe", wish.id());
      }
      double elevation = surface.elevation(wish.x(), wish.y());
      double deviation = surface.deviation(wish.x(), wish.y());
      double depth = field.over(wish.x(), wish.y(), elevation);
      probes.add(new Probe(wish.id(), elevation, deviation, depth));
    }
    return probes;
  }

  private static boolean covers(Room room, ProbeWish wish) {
    Coordinate position = new Coordinate(wish.x(), wish.y());
    return SimplePointInAreaLocator.locate(position, room.outline().polygon()) != Location.EXTERIOR;
  }
}
