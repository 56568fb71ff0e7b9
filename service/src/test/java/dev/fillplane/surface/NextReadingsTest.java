package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.room.Room;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Places for more readings, held against surfaces that are laid anew with the reading added. */
class NextReadingsTest {

  private static final double ERROR = 1e-6;
  private static final SurfaceWish STATED =
      Floors.given(Drift.LINEAR, VariogramShape.MATERN_3_2, ERROR, 9e-6, 2);
  private static final Room ROOM = TestFloors.room("hall", TestFloors.L_ROOM, TestFloors.ISLAND);

  private record Floor(KrigedSurface surface, Spots spots, FloorNodes nodes, List<Polygon> rooms) {

    static Floor of(Spots spots, SurfaceWish wish, Room... rooms) {
      KrigedSurface surface = KrigedSurface.fit(spots, wish);
      FloorSample sample = FloorSample.of(List.of(rooms), surface, 0.1);
      return new Floor(
          surface,
          spots,
          FloorNodes.of(sample, 0.002, 0, 0),
          Arrays.stream(rooms).map(room -> room.outline().polygon()).toList());
    }

    List<NextReadings.Choice> choose(int most) {
      return NextReadings.choose(nodes, spread(), spots, rooms, ERROR, most);
    }

    VolumeSpread spread() {
      return VolumeSpread.after(surface, nodes);
    }

    /**
     * Variance of the volume over the same nodes with one more reading of what the surface says.
     */
    double varianceWith(double x, double y) {
      Spots more = with(spots, x, y, surface.elevation(x, y));
      return VolumeSpread.after(KrigedSurface.fit(more, STATED), nodes).variance();
    }
  }

  @Test
  void addedReadingLeavesThePredictedVariance() {
    Floor floor = Floor.of(corner(9), STATED, ROOM);
    NextReadings.Choice first = floor.choose(1).get(0);
    assertEquals(floor.spread().variance(), first.before(), 1e-9 * first.before());
    assertEquals(first.after(), floor.varianceWith(first.x(), first.y()), 1e-6 * first.after());
    assertTrue(first.after() < 0.7 * first.before(), first.toString());
  }

  /** Each counts on those before it: all three added leave what the third predicts. */
  @Test
  void laterPlacesCountOnTheEarlierOnes() {
    Floor floor = Floor.of(corner(9), STATED, ROOM);
    Spots spots = floor.spots();
    double before = floor.spread().variance();
    for (NextReadings.Choice choice : floor.choose(3)) {
      assertEquals(before, choice.before(), 1e-6 * before);
      spots = with(spots, choice.x(), choice.y(), 0);
      before = VolumeSpread.after(KrigedSurface.fit(spots, STATED), floor.nodes()).variance();
      assertEquals(before, choice.after(), 1e-6 * before);
    }
  }

  @Test
  void noRandomPlaceIsBetter() {
    Floor floor = Floor.of(corner(9), STATED, ROOM);
    NextReadings.Choice first = floor.choose(1).get(0);
    Random random = new Random(5);
    double mean = 0;
    for (int i = 0; i < 40; i++) {
      double[] place = inside(floor.rooms().get(0), random);
      double left = floor.varianceWith(place[0], place[1]);
      // Places between the nodes may be better by a little.
      assertTrue(left > 0.98 * first.after(), Arrays.toString(place));
      mean += left / 40;
    }
    assertTrue(first.after() < 0.8 * mean, first.after() + " of " + mean);
  }

  @Test
  void placesLieInTheRoomAwayFromReadingsAndWalls() {
    Floor floor = Floor.of(corner(9), STATED, ROOM);
    Polygon room = floor.rooms().get(0);
    List<NextReadings.Choice> choices = floor.choose(10);
    assertEquals(10, choices.size());
    Spots spots = floor.spots();
    for (NextReadings.Choice choice : choices) {
      Point at = point(choice.x(), choice.y());
      assertTrue(room.contains(at) && room.getBoundary().distance(at) >= 0.1, choice.toString());
      for (int i = 0; i < spots.count(); i++) {
        double apart = Math.hypot(spots.x()[i] - choice.x(), spots.y()[i] - choice.y());
        assertTrue(apart >= 0.2, choice.toString());
      }
      spots = with(spots, choice.x(), choice.y(), 0);
    }
  }

  /** All readings in one half: the first place lies in the other. */
  @Test
  void goesWhereNobodyHasMeasured() {
    Room hall = TestFloors.room("hall", TestFloors.RECTANGLE);
    NextReadings.Choice first = Floor.of(corner(12), STATED, hall).choose(1).get(0);
    assertTrue(first.x() > 3.2, first.toString());
  }

  /** Two rooms; the floor of the second is over the target, so nothing of it is poured. */
  @Test
  void noPlaceWhereNothingIsPoured() {
    Spots spots = Floors.scattered(30, 4, (x, y) -> x < 5 ? -0.01 : 0.05);
    SurfaceWish near = Floors.given(VariogramShape.SPHERICAL, ERROR, 1e-4, 1);
    Room wet = TestFloors.room("wet", new double[] {0, 0, 4, 0, 4, 6, 0, 6});
    Room dry = TestFloors.room("dry", new double[] {6, 0, 10, 0, 10, 6, 6, 6});
    for (NextReadings.Choice choice : Floor.of(spots, near, wet, dry).choose(5)) {
      assertTrue(choice.x() < 4, choice.toString());
    }
  }

  @Test
  void nothingIsLeftOnAFloorWithoutVariance() {
    SurfaceWish certain = Floors.given(VariogramShape.SPHERICAL, 0, 0, 1);
    Spots flat = Floors.scattered(40, 3, (x, y) -> 0);
    KrigedSurface surface = KrigedSurface.fit(flat, certain);
    FloorSample sample = FloorSample.of(List.of(ROOM), surface, 0.1);
    FloorNodes nodes = FloorNodes.of(sample, 0.01, 0, 0);
    VolumeSpread spread = VolumeSpread.after(surface, nodes);
    List<Polygon> rooms = List.of(ROOM.outline().polygon());
    List<NextReadings.Choice> choices = NextReadings.choose(nodes, spread, flat, rooms, 1e-8, 3);
    for (NextReadings.Choice choice : choices) {
      assertTrue(choice.before() < 1e-12, choice.toString());
    }
  }

  @Test
  void nodesShareOutTheRooms() {
    Random random = new Random(8);
    for (int i = 0; i < 20; i++) {
      Room room = TestFloors.room("crooked", TestFloors.crooked(random));
      FloorSample sample = TestFloors.sample(TestFloors::waves, 0.1, room);
      FloorNodes nodes = FloorNodes.of(sample, 0, 0, 0);
      double area = room.outline().polygon().getArea();
      assertEquals(area, Arrays.stream(nodes.area()).sum(), 1e-6 * area);
      double wet = sample.under(0, 0, 0, 0).fillArea();
      assertEquals(wet, Arrays.stream(nodes.wetArea()).sum(), 0.03 * area);
      assertTrue(nodes.count() <= FloorNodes.MOST && nodes.count() > 30, "" + nodes.count());
      for (int n = 0; n < nodes.count(); n++) {
        assertEquals(
            nodes.cell()[n], nodes.frame().at(nodes.x()[n], nodes.y()[n]), "in its own cell");
      }
    }
  }

  @Test
  void roomsFarApartKeepFewCells() {
    Room near = TestFloors.room("near", TestFloors.RECTANGLE);
    Room far = TestFloors.room("far", new double[] {500, 400, 506, 400, 506, 404, 500, 404});
    FloorSample sample = TestFloors.sample((x, y) -> 0, 2, near, far);
    FloorNodes nodes = FloorNodes.of(sample, 1, 0, 0);
    assertTrue(nodes.frame().cells() <= FloorNodes.MOST_CELLS);
    assertEquals(48, Arrays.stream(nodes.area()).sum(), 1e-9);
  }

  @Test
  void deviationsAreThoseOfTheSurface() {
    Floor floor = Floor.of(corner(9), STATED, ROOM);
    Deviations deviations = Deviations.of(floor.nodes(), floor.spread());
    int inside = 0;
    for (int i = 0; i < floor.nodes().count(); i++) {
      double expected = floor.surface().deviation(floor.nodes().x()[i], floor.nodes().y()[i]);
      assertEquals(expected, deviations.deviations()[floor.nodes().cell()[i]], 1e-9);
      inside++;
    }
    long marked =
        Arrays.stream(deviations.deviations()).filter(d -> d != Deviations.OUTSIDE).count();
    assertEquals(inside, marked);
    assertTrue(marked < deviations.deviations().length, "the L leaves cells out");
  }

  /** Readings in the western half of the room. */
  private static Spots corner(int count) {
    Random random = new Random(count);
    double[] x = random.doubles(count, 0.2, 2.8).toArray();
    double[] y = random.doubles(count, 0.2, 3.8).toArray();
    return Floors.spots(x, y, (a, b) -> Floors.bumpy(a, b) - 0.02);
  }

  private static double[] inside(Polygon room, Random random) {
    while (true) {
      double x = 6 * random.nextDouble();
      double y = 4 * random.nextDouble();
      if (room.contains(point(x, y))) {
        return new double[] {x, y};
      }
    }
  }

  private static Point point(double x, double y) {
    return new GeometryFactory().createPoint(new Coordinate(x, y));
  }

  private static Spots with(Spots spots, double x, double y, double z) {
    return Floors.spots(
        appended(spots.x(), x), appended(spots.y(), y), appended(spots.elevation(), z));
  }

  private static double[] appended(double[] values, double value) {
    double[] longer = Arrays.copyOf(values, values.length + 1);
    longer[values.length] = value;
    return longer;
  }
}
