package dev.fillplane.render;

import dev.fillplane.plan.Plan;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.pour.PouredBay;
import dev.fillplane.target.RoomsPlane;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/** What every layer of one map works with. */
record Sheet(
    PlanRequest request,
    Plan plan,
    View view,
    Labels labels,
    Heights heights,
    DepthClasses classes,
    List<Polygon> rooms,
    Set<Layer> layers) {

  /** How far the frame of the map stands off the rooms, px. */
  static final double MARGIN = 56;

  /** Below this scale, px in a metre, the depths of single readings would hide the map. */
  private static final double CLOSE_UP = 42;

  /**
   * A sheet without labels.
   *
   * @param area px in which labels must stay
   */
  static Sheet of(PlanRequest request, Plan plan, View view, Envelope area, Set<Layer> layers) {
    return new Sheet(
        request,
        plan,
        view,
        new Labels(area),
        new Heights(request.units()),
        new DepthClasses(request.units(), plan.depth().minimum(), plan.depth().maximum()),
        request.rooms().stream().map(room -> room.outline().polygon()).toList(),
        layers);
  }

  /** Target minus an elevation; negative where that stands above the target. */
  double depth(double x, double y, double elevation) {
    RoomsPlane target = plane(new Coordinate(x, y));
    return target.elevation() + target.slopeX() * x + target.slopeY() * y - elevation;
  }

  /** The plane of the room that a position lies in; the first plane where it lies in none. */
  private RoomsPlane plane(Coordinate position) {
    List<RoomsPlane> planes = plan.target().planes();
    for (int i = 0; i < rooms.size() && planes.size() > 1; i++) {
      if (SimplePointInAreaLocator.locate(position, rooms.get(i)) != Location.EXTERIOR) {
        String id = request.rooms().get(i).id();
        return planes.stream()
            .filter(plane -> plane.rooms().contains(id))
            .findFirst()
            .orElseThrow();
      }
    }
    return planes.get(0);
  }

  /** The bays that finish the floor. */
  List<PouredBay> lastPass() {
    return plan.pour().bays().stream().filter(this::isLast).toList();
  }

  /** The bays that others are poured over. */
  List<PouredBay> passesBefore() {
    return plan.pour().bays().stream().filter(bay -> !isLast(bay)).toList();
  }

  private boolean isLast(PouredBay bay) {
    int last = plan.pour().bays().stream().mapToInt(PouredBay::lift).max().orElse(1);
    return bay.lift() == last && !bay.pocket();
  }

  /** Whether the floor stands at the target or above it somewhere. */
  boolean partlyBare() {
    return plan.depth().minimum() <= 0;
  }

  boolean shows(Layer layer) {
    return layers.contains(layer);
  }

  /** Whether every reading is told with its depth. */
  boolean closeUp() {
    return view.scale() >= CLOSE_UP;
  }

  /** A label in the middle of a symbol, to be moved beside it. */
  Label label(String text, double planX, double planY, Look look) {
    return new Label(text, view.x(planX), view.y(planY), look);
  }
}
