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
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/**
 * What must be on site for a pour. Exact for the mean surface.
 *
 * @see BagOdds
 * @see LiftRule
 */
public final class Supplies {

  /** How far a dam stands above the pour. */
  public static final double DAM_FREEBOARD = 0.010;

  private final List<Room> rooms;
  private final Depths depths;
  private final DepthSummary summary;
  private final DataSheet sheet;
  private final Optional<JoistBow> bow;

  private Supplies(
      List<Room> rooms,
      Depths depths,
      DepthSummary summary,
      DataSheet sheet,
      Optional<JoistBow> bow) {
    this.rooms = rooms;
    this.depths = depths;
    this.summary = summary;
    this.sheet = sheet;
    this.bow = bow;
  }

  /**
   * For a pour.
   *
   * @param rooms with valid outlines
   * @param depths of the same pour as {@code summary}
   */
  public static Supplies of(
      List<Room> rooms, Depths depths, DepthSummary summary, DataSheet sheet) {
    return new Supplies(rooms, depths, summary, sheet, Optional.empty());
  }

  /**
   * The same pour on joists that bend; the yield of the sheet is what it adds over a stiff floor.
   */
  public Supplies bowing(Optional<JoistBow> joists) {
    return new Supplies(rooms, depths, summary, sheet, joists);
  }

  /**
   * Adds everything up.
   *
   * @param bags counted by {@link BagOdds}
   * @param drivers what makes them unsure, by {@link BagDrivers}
   * @param wait time from one layer of the pour until the next may be poured on it, primed
   * @param request place of the request
   * @param findings receives warnings of what is thin and of layers, and an error where there would
   *     be too many layers
   */
  public Quantities quantities(
      Bags bags, List<Driver> drivers, double wait, Place request, Findings findings) {
    PrimerNeed primer = new PrimerNeed(rooms, sheet);
    List<Lift> lifts =
        new Lifts(depths, summary, sheet, primer, wait).layers(request.at("material"), findings);
    ThinArea thin = ThinArea.of(depths, summary, sheet);
    thin.warn(request.at("target"), findings);
    return new Quantities(
        bags,
        drivers,
        bags.order() * sheet.waterPerBag(),
        primer.of(lifts),
        bags.order() * sheet.bagMass(),
        lifts,
        thin,
        AggregateOffer.of(depths, summary, bags, sheet),
        bow,
        rooms.stream().map(this::room).toList(),
        perimeterSeal(),
        dams());
  }

  private RoomQuantity room(Room room) {
    Polygon outline = room.outline().polygon();
    Fill fill = depths.within(room, outline);
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
