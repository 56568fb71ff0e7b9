package dev.fillplane.supply;

import dev.fillplane.depth.DepthSummary;
import dev.fillplane.depth.Depths;
import dev.fillplane.depth.Fill;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.DataSheet;
import dev.fillplane.room.Opening;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * What must be on site for a pour. Exact for the mean surface, apart from the areas of lifts, which
 * come from the depth grid.
 *
 * @see BagOdds
 * @see Lifts
 */
public final class Supplies {

  /** How far a dam stands above the pour. */
  public static final double DAM_FREEBOARD = 0.010;

  private final List<Room> rooms;
  private final Depths depths;
  private final DataSheet sheet;

  private Supplies(List<Room> rooms, Depths depths, DataSheet sheet) {
    this.rooms = rooms;
    this.depths = depths;
    this.sheet = sheet;
  }

  /**
   * Adds everything up.
   *
   * @param rooms with valid outlines
   * @param depths of the same pour as {@code summary}
   * @param bags counted by {@link BagOdds}
   * @param drivers what makes them unsure, by {@link BagDrivers}
   * @param place of the material in the request
   * @param findings as in {@link Lifts#of}
   */
  public static Quantities of(
      List<Room> rooms,
      Depths depths,
      DepthSummary summary,
      Bags bags,
      List<Driver> drivers,
      DataSheet sheet,
      Place place,
      Findings findings) {
    List<Lift> lifts = Lifts.of(summary, sheet, place, findings);
    Supplies supplies = new Supplies(rooms, depths, sheet);
    return new Quantities(
        bags,
        drivers,
        bags.order() * sheet.waterPerBag(),
        PrimerNeed.of(rooms, lifts, sheet),
        bags.order() * sheet.bagMass(),
        lifts,
        rooms.stream().map(supplies::room).toList(),
        supplies.perimeterSeal(),
        supplies.dams());
  }

  private RoomQuantity room(Room room) {
    Polygon outline = room.outline().polygon();
    Fill fill = depths.within(outline);
    return new RoomQuantity(
        room.id(),
        outline.getArea(),
        fill.volume(),
        fill.meanDepth(),
        BagOdds.likely(fill.volume(), fill.area(), sheet));
  }

  /** Walls and islands of all rooms without their openings. */
  private double perimeterSeal() {
    double length = 0;
    for (Room room : rooms) {
      double openings = room.openings().stream().mapToDouble(Opening::width).sum();
      length += Math.max(0, room.outline().polygon().getLength() - openings);
    }
    return length;
  }

  private List<Dam> dams() {
    List<Dam> dams = new ArrayList<>();
    for (Room room : rooms) {
      for (Opening opening : room.openings()) {
        dams.add(new Dam(room.id(), opening.id(), opening.width(), damHeight(opening)));
      }
    }
    return dams;
  }

  /** Over the deepest of both ends and the middle. */
  private double damHeight(Opening opening) {
    Position from = opening.from();
    Position to = opening.to();
    double middle = depths.at((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
    double ends = Math.max(depths.at(from.x(), from.y()), depths.at(to.x(), to.y()));
    return Math.max(0, Math.max(middle, ends)) + DAM_FREEBOARD;
  }
}
