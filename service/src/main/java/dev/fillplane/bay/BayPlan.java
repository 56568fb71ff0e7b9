package dev.fillplane.bay;

import dev.fillplane.depth.Depths;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.finding.Stopped;
import dev.fillplane.room.Feature;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * The bays of a floor in the order of the pour, cut into ribbons.
 *
 * <p>A room is a bay; a moving joint divides it, and what stays open is cut out of it. A doorway is
 * never poured through: a stop stands in it. The part with most doorways and joints between it and
 * an exit comes first, of those the one with the longest way; parts with an exit come last. Parts
 * that reach no exit are poured before all others, with an assumed way out. Lower lifts and deep
 * pockets are passes of their own over the whole floor, before the last pass; people wait until
 * they can walk on one before the next.
 *
 * <p>Each bay is travelled toward its way out and cut across the travel into strips that tile it,
 * ordered so that each can be walked to over floor that is not poured yet. Exact up to 10 nm on
 * plan; turning or shifting the plan changes no more than that.
 *
 * @see Layers
 * @see SplitCandidates
 */
public final class BayPlan {

  private final List<Bay> bays;
  private final List<Joint> joints;
  private final RibbonRule rule;

  BayPlan(List<Bay> bays, List<Joint> joints, RibbonRule rule) {
    this.bays = List.copyOf(bays);
    this.joints = List.copyOf(joints);
    this.rule = rule;
  }

  /**
   * Plans the bays of a floor that is poured in one pass.
   *
   * @param rooms valid rooms, each with its own id
   * @param depths how deep the pour is
   * @param rule how wide ribbons are
   */
  public static BayPlan of(List<Room> rooms, Depths depths, RibbonRule rule) {
    return of(rooms, List.of(), List.of(Layer.whole(depths)), rule);
  }

  /**
   * Plans the bays of a floor.
   *
   * @param rooms valid rooms, each with its own id
   * @param features valid features
   * @param layers the passes, the lowest first; at least one
   * @param rule how wide ribbons are
   */
  public static BayPlan of(
      List<Room> rooms, List<Feature> features, List<Layer> layers, RibbonRule rule) {
    return new BayPlanner(rooms, features, layers, rule).plan();
  }

  /**
   * Plans one bay of a whole room that is poured straight from one place to another.
   *
   * @param room a valid room
   * @param from where the pour begins
   * @param wayOut where it ends and people leave; not at {@code from}
   */
  public static BayPlan toward(
      Room room, Position from, Position wayOut, Depths depths, RibbonRule rule) {
    Polygon floor = room.outline().polygon();
    Travel travel = Travel.toward(from, wayOut.x() - from.x(), wayOut.y() - from.y());
    Envelope extent = travel.toFrame().transform(floor).getEnvelopeInternal();
    Layer layer = Layer.whole(depths);
    BayMaker maker = new BayMaker(room, layer.lift(), false, PassDepth.first(layer), rule);
    Bay bay = maker.make(room.id(), floor, new TravelChoice(travel, wayOut, extent), true);
    return new BayPlan(List.of(bay), List.of(), rule);
  }

  /** The bays in the order of the pour; those of whole rooms come last. */
  public List<Bay> bays() {
    return bays;
  }

  /** Where the pour ends against a stop. */
  public List<Joint> joints() {
    return joints;
  }

  /**
   * The same plan with one bay divided by a dam.
   *
   * @param bay one of its bays
   * @param split one of its {@link SplitCandidates}
   * @throws IllegalArgumentException if the dam does not divide the bay
   */
  public BayPlan split(Bay bay, Split split) {
    return new BaySplitter(bays, joints, rule).split(bay, split);
  }

  /**
   * Tells where nothing is left to pour of a room, which is an error, and warns where a way out had
   * to be assumed: once if there is no exit at all, else for each room that reaches none.
   *
   * @param rooms as they stand in the request
   * @param place of the list of rooms
   * @param findings takes errors and warnings
   */
  public void warn(List<Room> rooms, Place place, Findings findings) {
    for (int i = 0; i < rooms.size(); i++) {
      Stopped.ifInterrupted();
      String room = rooms.get(i).id();
      if (bays.stream().noneMatch(bay -> bay.room().id().equals(room))) {
        findings.error("features-leave-no-floor", place.at(i), "room", room);
      }
    }
    boolean anyExit =
        rooms.stream()
            .flatMap(room -> room.openings().stream())
            .anyMatch(opening -> opening.kind() == OpeningKind.EXIT);
    if (!anyExit) {
      findings.warning("no-exit", place);
      return;
    }
    for (int i = 0; i < rooms.size(); i++) {
      Stopped.ifInterrupted();
      if (!leadsToExit(rooms.get(i).id())) {
        findings.warning("room-without-way-out", place.at(i), "room", rooms.get(i).id());
      }
    }
  }

  private boolean leadsToExit(String room) {
    return bays.stream().filter(bay -> bay.room().id().equals(room)).allMatch(Bay::leadsToExit);
  }
}
