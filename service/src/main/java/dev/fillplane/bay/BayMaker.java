package dev.fillplane.bay;

import dev.fillplane.depth.Fill;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * Makes a bay of a part of the floor: chooses its travel and cuts it into ribbons.
 *
 * @param room the room it lies in
 * @param lift its lift
 * @param pocket whether a later pass goes over it
 * @param depth how deep it is poured
 * @param rule how wide its ribbons are
 */
record BayMaker(Room room, int lift, boolean pocket, PassDepth depth, RibbonRule rule) {

  /** Like another bay, for a part of it. */
  static BayMaker like(Bay bay, RibbonRule rule) {
    return new BayMaker(bay.room(), bay.lift(), bay.pocket(), bay.depth(), rule);
  }

  /**
   * The bay of a part.
   *
   * @param walls what has the walls that the travel may go along
   * @param places where it may be left
   * @param known whether these lead to an exit
   */
  Bay make(String id, Polygon part, Polygon walls, List<Position> places, boolean known) {
    TravelChoice choice =
        new TravelChooser(part, Directions.of(walls), depth, rule.longestFront()).choose(places);
    return make(id, part, choice, known);
  }

  /** The bay of a part with a travel that is chosen. */
  Bay make(String id, Polygon part, TravelChoice choice, boolean known) {
    List<Strip> strips = StripCutter.cut(room, part, choice, depth, rule);
    double area = 0;
    double volume = 0;
    for (Strip strip : strips) {
      area += strip.fill().area();
      volume += strip.fill().volume();
    }
    return new Bay(
        id,
        room,
        part,
        lift,
        pocket,
        depth,
        choice.wayOut(),
        known,
        choice.travel(),
        strips,
        new Fill(area, volume));
  }
}
