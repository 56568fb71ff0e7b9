package dev.fillplane.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.plan.Plan;
import dev.fillplane.pour.PouredBay;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;

class PlanTracerTest {

  private static final Planned DEEP = PlannedFloors.deep(UnitSystem.METRIC);
  private static final List<PlanShape> SHAPES = shapes(DEEP);

  @Test
  void everythingOfThePlanIsThere() {
    Plan plan = DEEP.plan();
    assertEquals(3, of("room").size());
    assertEquals(3, of("opening").size());
    assertEquals(plan.depth().contours().contours().size(), of("contour").size());
    assertEquals(plan.pour().bays().size(), of("bay").size());
    assertEquals(
        plan.pour().bays().stream().mapToInt(bay -> bay.ribbons().size()).sum(),
        of("ribbon").size());
    assertEquals(plan.pour().joints().size(), of("joint").size());
    assertEquals(plan.quantities().dams().size(), of("dam").size());
    assertEquals(plan.rails().size(), of("rail").size());
    assertEquals(
        plan.rails().stream().mapToInt(rail -> rail.stations().size()).sum(), of("station").size());
    assertEquals(plan.pins().size(), of("pin").size());
    for (String kind : List.of("contour", "joint", "dam", "rail", "station", "pin")) {
      assertTrue(of(kind).size() > 0, kind);
    }
  }

  @Test
  void shapesAreOfTheirType() {
    assertEquals("Polygon", typeOf("room"));
    assertEquals("LineString", typeOf("opening"));
    assertEquals("MultiLineString", typeOf("contour"));
    assertEquals("MultiPolygon", typeOf("bay"));
    assertEquals("Polygon", typeOf("ribbon"));
    assertEquals("LineString", typeOf("rail"));
    assertEquals("Point", typeOf("station"));
    assertEquals("Point", typeOf("pin"));
  }

  private static String typeOf(String kind) {
    return of(kind).stream()
        .map(shape -> shape.geometry().type())
        .distinct()
        .collect(Collectors.joining(","));
  }

  /** Bays are what their ribbons cover. */
  @Test
  void baysCoverTheirRibbons() {
    List<PouredBay> bays = DEEP.plan().pour().bays();
    for (int i = 0; i < bays.size(); i++) {
      double ribbons =
          bays.get(i).ribbons().stream()
              .mapToDouble(ribbon -> ribbon.outline().polygon().getArea())
              .sum();
      List<?> polygons = (List<?>) of("bay").get(i).geometry().coordinates();
      double area =
          polygons.stream().mapToDouble(p -> new Outline(rings(p)).polygon().getArea()).sum();
      assertEquals(ribbons, area, 1e-6 * ribbons);
    }
  }

  @SuppressWarnings("unchecked")
  private static List<List<Position>> rings(Object rings) {
    return (List<List<Position>>) rings;
  }

  /** RFC 7946, 3.1.6: outer rings anticlockwise. */
  @Test
  void outerRingsRunAnticlockwise() {
    List<Position> clockwise =
        List.of(
            new Position(0, 0),
            new Position(0, 4),
            new Position(6, 4),
            new Position(6, 0),
            new Position(0, 0));
    Planned planned =
        PlannedFloors.of(
            "turned",
            List.of(Floors.room("hall", List.of(Floors.exit("out", 1, 0, 2, 0)), clockwise)),
            UnitSystem.METRIC);
    PlanShape room = shapes(planned).get(0);
    Coordinate[] ring =
        rings(room.geometry().coordinates()).get(0).stream()
            .map(p -> new Coordinate(p.x(), p.y()))
            .toArray(Coordinate[]::new);
    assertTrue(Orientation.isCCW(ring));
  }

  @Test
  void stationsLieOnTheirRails() {
    PlanShape rail = of("rail").get(0);
    int number = rail.properties().number().orElseThrow();
    List<PlanShape> stations =
        of("station").stream()
            .filter(s -> s.properties().number().orElseThrow() == number)
            .toList();
    List<?> ends = (List<?>) rail.geometry().coordinates();
    assertEquals(ends.get(0), stations.get(0).geometry().coordinates());
    Position last = (Position) stations.get(stations.size() - 1).geometry().coordinates();
    assertEquals(0, last.distance((Position) ends.get(1)), 1e-9);
  }

  @Test
  void onlyWhatBelongsToAKindIsThere() {
    PlanShapeProperties pin = of("pin").get(0).properties();
    assertEquals(DEEP.plan().pins().get(0).height(), pin.height().orElseThrow());
    assertTrue(pin.depth().isEmpty() && pin.bay().isEmpty() && pin.start().isEmpty());
    PlanShapeProperties ribbon = of("ribbon").get(0).properties();
    assertEquals(1, ribbon.number().orElseThrow());
    assertEquals(
        DEEP.plan().pour().bays().get(0).ribbons().get(0).start(), ribbon.start().orElseThrow());
  }

  @Test
  void saysThatItsGridIsLocal() {
    PlanShapeCollection all = PlanTracer.trace(DEEP.request(), DEEP.plan());
    assertEquals("FeatureCollection", all.type());
    assertTrue(all.arrangement().contains("prior arrangement (RFC 7946, section 4)"));
    assertEquals(
        List.of("Feature"),
        List.copyOf(new TreeSet<>(SHAPES.stream().map(PlanShape::type).toList())));
  }

  private static List<PlanShape> shapes(Planned planned) {
    return PlanTracer.trace(planned.request(), planned.plan()).features();
  }

  private static List<PlanShape> of(String kind) {
    return SHAPES.stream().filter(shape -> shape.properties().kind().equals(kind)).toList();
  }
}
