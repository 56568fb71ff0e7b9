package dev.fillplane.bay;

import dev.fillplane.room.Feature;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Polygon;

/** Plans the bays of all passes: those of whole rooms first, then the pockets under them. */
final class BayPlanner {

  /** Smaller pockets are left to the pass above them. */
  private static final double CRUMB = 0.01;

  private final List<Room> rooms;
  private final List<Layer> layers;
  private final RibbonRule rule;
  private final FloorParts floor;
  private final List<WayOut> ways;
  private final Set<String> taken = new LinkedHashSet<>();

  BayPlanner(List<Room> rooms, List<Feature> features, List<Layer> layers, RibbonRule rule) {
    this.rooms = rooms;
    this.rule = rule;
    this.floor = FloorParts.of(rooms, features);
    this.ways = WaysOut.farthestFirst(floor);
    this.layers = layers.stream().map(this::byParts).toList();
  }

  /** A layer with its pockets by the parts of the floor. */
  private Layer byParts(Layer layer) {
    if (layer.isLast()) {
      return layer;
    }
    List<List<Polygon>> pockets = new ArrayList<>();
    for (int i = 0; i < floor.size(); i++) {
      List<Polygon> inPart = new ArrayList<>();
      for (Polygon pocket : layer.pockets().get(floor.part(i).room())) {
        Overlay.common(pocket, floor.part(i).polygon()).stream()
            .filter(common -> common.getArea() >= CRUMB)
            .forEach(inPart::add);
      }
      pockets.add(inPart);
    }
    return new Layer(layer.lift(), layer.upTo(), pockets);
  }

  BayPlan plan() {
    List<Bay> whole = new ArrayList<>();
    for (WayOut way : ways) {
      whole.add(whole(way));
    }
    List<Bay> bays = new ArrayList<>();
    for (int layer = 0; layer < layers.size() - 1; layer++) {
      for (int i = 0; i < whole.size(); i++) {
        bays.addAll(pockets(layer, whole.get(i), ways.get(i).part()));
      }
    }
    bays.addAll(whole);
    Layer last = layers.get(layers.size() - 1);
    return new BayPlan(bays, new Joints(rooms, floor, whole, ways, last.upTo()).all(), rule);
  }

  private Bay whole(WayOut way) {
    Room room = floor.room(way.part());
    int number = layers.size() - 1;
    BayMaker maker = new BayMaker(room, layers.get(number).lift(), false, depth(number), rule);
    Polygon part = floor.part(way.part()).polygon();
    boolean only = floor.count(floor.part(way.part()).room()) == 1;
    String id = only ? name(room.id()) : numbered(room.id());
    return maker.make(id, part, part, way.places(), way.known());
  }

  private List<Bay> pockets(int number, Bay over, int part) {
    Layer layer = layers.get(number);
    BayMaker maker = new BayMaker(over.room(), layer.lift(), true, depth(number), rule);
    List<Bay> bays = new ArrayList<>();
    for (Pocket pocket : Pocket.under(over, layer.pockets().get(part))) {
      String id = numbered(over.id() + " pocket");
      List<Position> places = List.of(pocket.wayOut());
      bays.add(maker.make(id, pocket.polygon(), over.polygon(), places, over.leadsToExit()));
    }
    return bays;
  }

  private PassDepth depth(int layer) {
    return layer == 0
        ? PassDepth.first(layers.get(0))
        : PassDepth.over(layers.get(layer - 1), layers.get(layer));
  }

  private String numbered(String base) {
    int number = 1;
    while (taken.contains(base + " " + number)) {
      number++;
    }
    return name(base + " " + number);
  }

  /** A room may be called like a bay of another one. */
  private String name(String wish) {
    return taken.add(wish) ? wish : numbered(wish);
  }
}
