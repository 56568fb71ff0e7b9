package dev.fillplane.depth;

import static dev.fillplane.surface.TestFloors.RECTANGLE;
import static dev.fillplane.surface.TestFloors.crooked;
import static dev.fillplane.surface.TestFloors.moved;
import static dev.fillplane.surface.TestFloors.room;
import static dev.fillplane.surface.TestFloors.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.room.Room;
import dev.fillplane.surface.FloorPoints;
import dev.fillplane.surface.FloorResiduals;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.Spots;
import dev.fillplane.surface.TestFloors;
import dev.fillplane.target.Plane;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** Depths over floors that are ground, and over rooms with targets of their own. */
class GroundFloorTest {

  private static final double LEAST = 0.003;
  private static final Plane TARGET = new Plane(0.002, 0.0004, -0.0003);

  private static Levels ground(double least, Plane... planes) {
    return new Levels(List.of(planes), OptionalDouble.of(least));
  }

  private static double hump(double x, double y, double atX, double atY, double height) {
    return Math.max(0, height - 0.01 * Math.hypot(x - atX, y - atY));
  }

  /** Readings, each x, y and elevation. */
  private static Spots spots(double[]... readings) {
    double[] x = Arrays.stream(readings).mapToDouble(r -> r[0]).toArray();
    double[] y = Arrays.stream(readings).mapToDouble(r -> r[1]).toArray();
    double[] elevation = Arrays.stream(readings).mapToDouble(r -> r[2]).toArray();
    return new Spots(x, y, elevation, x.clone());
  }

  /** A reading 4 mm over the floor between the readings, 0.8 m from the next one. */
  @Test
  void aLoneHighReadingIsAConeOfItsOwn() {
    FloorSample floor = sample((x, y) -> 0, 0.1, room("r", RECTANGLE));
    DepthField depths = DepthField.of(floor, ground(LEAST, Plane.level(0.003)));
    Spots readings =
        spots(new double[] {2, 2, 0.004}, new double[] {2.8, 2, 0}, new double[] {5, 1, 0});
    List<GroundArea> areas = GroundAreas.of(depths, readings);
    assertEquals(1, areas.size());
    GroundArea lone = areas.get(0);
    assertEquals(2, lone.x(), 1e-12);
    assertEquals(0.004, lone.height(), 1e-12);
    assertEquals(Math.PI * 0.16, lone.area(), 0.01);
    assertEquals(lone.area() * 0.004 / 3, lone.volume(), 1e-12);
  }

  @Test
  void aHighReadingOnAHumpRaisesIt() {
    FloorSample floor = sample((x, y) -> hump(x, y, 1.5, 2, 0.02), 0.05, room("r", RECTANGLE));
    DepthField depths = DepthField.of(floor, ground(LEAST, Plane.level(0.013)));
    List<GroundArea> areas = GroundAreas.of(depths, spots(new double[] {1.6, 2, 0.024}));
    assertEquals(1, areas.size());
    assertEquals(0.014, areas.get(0).height(), 1e-12);
    assertEquals(depths.grindVolume(), areas.get(0).volume(), 1e-12);
  }

  /** Filled less ground is the room between the target and the floor, whatever is in it. */
  @Test
  void filledLessGroundIsTargetLessFloor() {
    Random random = new Random(5);
    for (int i = 0; i < 20; i++) {
      FloorSample floor = sample(TestFloors::waves, 0.13, room("r", crooked(random)));
      double least = random.nextInt(3) * 0.002;
      DepthField depths = DepthField.of(floor, ground(least, TARGET));
      double high = 0.1;
      Plane above = new Plane(TARGET.elevation() + high, TARGET.slopeX(), TARGET.slopeY());
      double between = DepthField.of(floor, above).volume() - high * depths.area();
      assertEquals(between, depths.volume() - depths.grindVolume(), 1e-11);
      assertTrue(depths.grindVolume() > 0);
    }
  }

  @Test
  void theLeastDepthLiesOverAllThatIsGround() {
    FloorSample floor = sample(TestFloors::waves, 0.1, room("r", RECTANGLE));
    DepthField depths = DepthField.of(floor, ground(LEAST, TARGET));
    FloorPoints points = floor.points();
    for (int i = 0; i < points.count(); i++) {
      double x = points.x()[i];
      double y = points.y()[i];
      double plain = TARGET.at(x, y) - points.elevation()[i];
      assertEquals(Math.max(LEAST, plain), depths.at(x, y), 1e-12);
    }
    assertEquals(LEAST, depths.minimum(), 1e-15);
    assertEquals(depths.area(), depths.pouredArea(), 1e-9);
  }

  /** Down to the least depth nothing runs dry; below it nothing is left over what was ground. */
  @Test
  void deeperThanKeepsTheFloorGround() {
    Random random = new Random(8);
    for (int i = 0; i < 10; i++) {
      FloorSample floor = sample(TestFloors::waves, 0.2, room("r", crooked(random)));
      DepthField depths = DepthField.of(floor, ground(LEAST, TARGET));
      DepthField plain = DepthField.of(floor, TARGET);
      double shallow = LEAST * random.nextDouble();
      Fill most = depths.deeperThan(shallow);
      assertEquals(depths.area(), most.area(), 1e-12);
      assertEquals(depths.volume() - shallow * depths.area(), most.volume(), 1e-12);
      double deep = LEAST * (1 + random.nextDouble());
      assertEquals(plain.deeperThan(deep).volume(), depths.deeperThan(deep).volume(), 1e-12);
      assertEquals(plain.deeperThan(deep).area(), depths.deeperThan(deep).area(), 1e-12);
      assertEquals(new Fill(depths.pouredArea(), depths.volume()), depths.deeperThan(0));
    }
  }

  @Test
  void partsOfAGroundFloorAddUpToIt() {
    FloorSample floor = sample(TestFloors::waves, 0.1, room("r", RECTANGLE));
    DepthField depths = DepthField.of(floor, ground(LEAST, TARGET));
    Polygon west = room("w", new double[] {0, 0, 2.34, 0, 2.34, 4, 0, 4}).outline().polygon();
    Polygon east = room("e", new double[] {2.34, 0, 6, 0, 6, 4, 2.34, 4}).outline().polygon();
    double sum = depths.within(west).volume() + depths.within(east).volume();
    assertEquals(depths.volume(), sum, 1e-12);
  }

  @Test
  void drawsOverAGroundFloorAreGroundAsPlanned() {
    FloorSample floor = sample(TestFloors::waves, 0.1, room("r", RECTANGLE));
    DepthField depths = DepthField.of(floor, ground(LEAST, TARGET));
    VolumeDraws draws = depths.volumes(all(0, 0.002, 0.004));
    assertEquals(depths.volume(), draws.volumes()[0], 1e-12);
    assertEquals(depths.volume() - 0.002 * depths.area(), draws.volumes()[1], 1e-12);
    assertEquals(1 / 3.0, draws.bareOdds(), 1e-12);
    assertEquals(0.001, draws.guardHeight(1), 1e-12);
  }

  /** Realisations that are off by the same everywhere. */
  private static FloorResiduals all(double... off) {
    return new FloorResiduals() {
      @Override
      public int count() {
        return off.length;
      }

      @Override
      public int cellAt(double x, double y) {
        return 0;
      }

      @Override
      public double residual(int realisation, int cell) {
        return off[realisation];
      }
    };
  }

  @Test
  void roomsWithPlanesOfTheirOwnAreAsIfAlone() {
    Room west = room("w", RECTANGLE);
    Room east = room("e", moved(RECTANGLE, 0, 6.5, 0));
    Plane low = Plane.level(-0.001);
    DepthField both =
        DepthField.of(
            sample(TestFloors::waves, 0.1, west, east),
            new Levels(List.of(TARGET, low), OptionalDouble.empty()));
    DepthField first = DepthField.of(sample(TestFloors::waves, 0.1, west), TARGET);
    DepthField second = DepthField.of(sample(TestFloors::waves, 0.1, east), low);
    assertEquals(first.volume(), both.rooms().get(0).volume(), 1e-5 * first.volume());
    assertEquals(second.volume(), both.rooms().get(1).volume(), 1e-3 * second.volume());
    assertEquals(-0.0015, both.over(8, 2, 0.0005), 1e-12);
    assertEquals(TARGET.at(1, 2) - 0.0005, both.over(1, 2, 0.0005), 1e-12);
    assertEquals(Math.min(first.minimum(), second.minimum()), both.minimum(), 1e-4);
  }

  @Test
  void everyRoomNeedsAPlane() {
    FloorSample floor = sample(TestFloors::waves, 0.5, room("r", RECTANGLE));
    Levels two = new Levels(List.of(TARGET, TARGET), OptionalDouble.empty());
    assertThrows(IllegalArgumentException.class, () -> DepthField.of(floor, two));
  }

  /** Cones 0.02 and 0.015 high with a slope of 1 in 100, cut at 0.01: circles of 1 m and 0.5 m. */
  @Test
  void groundAreasAreTheHumpsTheHighestFirst() {
    FloorSample floor =
        sample(
            (x, y) -> Math.max(hump(x, y, 1.5, 2, 0.02), hump(x, y, 4.5, 2, 0.015)),
            0.05,
            room("r", RECTANGLE));
    DepthField depths = DepthField.of(floor, ground(LEAST, Plane.level(0.013)));
    List<GroundArea> areas = GroundAreas.of(depths, Spots.NONE);
    assertEquals(2, areas.size());
    GroundArea high = areas.get(0);
    assertEquals(1.5, high.x(), 0.05);
    assertEquals(2, high.y(), 0.05);
    assertEquals(0.01, high.height(), 1e-4);
    assertEquals(Math.PI, high.area(), 0.02);
    assertEquals(Math.PI * 0.01 / 3, high.volume(), 1e-4);
    assertEquals(Math.PI, high.outline().polygon().getArea(), 0.06);
    assertEquals(0.005, areas.get(1).height(), 1e-4);
    assertEquals(Math.PI * 0.25, areas.get(1).area(), 0.02);
  }

  @Test
  void groundAreasAddUpToTheWhole() {
    Random random = new Random(9);
    for (int i = 0; i < 20; i++) {
      FloorSample floor = sample(TestFloors::waves, 0.1, room("r", crooked(random)));
      DepthField depths = DepthField.of(floor, ground(LEAST, TARGET));
      List<GroundArea> areas = GroundAreas.of(depths, Spots.NONE);
      double area = areas.stream().mapToDouble(GroundArea::area).sum();
      double volume = areas.stream().mapToDouble(GroundArea::volume).sum();
      assertEquals(depths.grindArea(), area, 1e-9);
      assertEquals(depths.grindVolume(), volume, 1e-12);
      double highest = LEAST - DepthField.of(floor, TARGET).minimum();
      assertEquals(highest, areas.get(0).height(), 1e-12);
    }
  }

  @Test
  void nothingIsListedWhereNothingIsGround() {
    FloorSample floor = sample(TestFloors::waves, 0.2, room("r", RECTANGLE));
    assertTrue(GroundAreas.of(DepthField.of(floor, TARGET), Spots.NONE).isEmpty());
    assertTrue(
        GroundAreas.of(DepthField.of(floor, ground(LEAST, Plane.level(1))), Spots.NONE).isEmpty());
  }
}
