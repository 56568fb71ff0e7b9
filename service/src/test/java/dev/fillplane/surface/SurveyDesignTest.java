package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.room.Room;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class SurveyDesignTest {

  private static final Variogram STATED = new Variogram(VariogramShape.EXPONENTIAL, 1e-6, 9e-6, 2);

  /** What is foretold before any reading is what kriging says once the places are read. */
  @ParameterizedTest
  @EnumSource(Drift.class)
  void foretoldDeviationIsThatOfTheSurface(Drift drift) {
    Room room = TestFloors.room("hall", TestFloors.L_ROOM, TestFloors.ISLAND);
    SurveyDesign design = SurveyDesign.over(List.of(room), STATED, drift, 1e-6);
    for (int i = 0; i < 14; i++) {
      assertTrue(design.next());
    }
    double[] x = design.chosen().stream().mapToDouble(PlannedSpot::x).toArray();
    double[] y = design.chosen().stream().mapToDouble(PlannedSpot::y).toArray();
    SurfaceWish wish = Floors.given(drift, STATED.shape(), 1e-6, 9e-6, 2);
    KrigedSurface read = KrigedSurface.fit(Floors.spots(x, y, Floors::bumpy), wish);
    FloorSample sample = FloorSample.of(List.of(room), read, 0.1);
    FloorNodes nodes = FloorNodes.of(sample, 1, 0, 0);
    double expected = Math.sqrt(VolumeSpread.after(read, nodes).variance());
    assertEquals(expected, design.deviation(), 0.001 * expected);
  }

  /** One more place inside against the same number with a random one in its stead. */
  @Test
  void placesInsideBeatRandomOnes() {
    Room room = TestFloors.room("hall", new double[] {0, 0, 9, 0, 9, 7, 0, 7});
    SurveyDesign design = SurveyDesign.over(List.of(room), STATED, Drift.LINEAR, 1e-6);
    while (!design.edgesChosen()) {
      assertTrue(design.next());
    }
    List<PlannedSpot> edges = design.chosen();
    assertTrue(design.next());
    double chosen = design.deviation();
    Random random = new Random(3);
    for (int i = 0; i < 30; i++) {
      double[] x = new double[edges.size() + 1];
      double[] y = new double[edges.size() + 1];
      for (int k = 0; k < edges.size(); k++) {
        x[k] = edges.get(k).x();
        y[k] = edges.get(k).y();
      }
      x[edges.size()] = 9 * random.nextDouble();
      y[edges.size()] = 7 * random.nextDouble();
      SurfaceWish wish = Floors.given(Drift.LINEAR, STATED.shape(), 1e-6, 9e-6, 2);
      KrigedSurface read = KrigedSurface.fit(Floors.spots(x, y, (a, b) -> 0), wish);
      FloorNodes nodes = FloorNodes.of(FloorSample.of(List.of(room), read, 0.1), 1, 0, 0);
      assertTrue(chosen < 1.01 * Math.sqrt(VolumeSpread.after(read, nodes).variance()));
    }
  }

  @Test
  void edgesComeFirstInTheirOrder() {
    Room room = TestFloors.room("hall", new double[] {0, 0, 9, 0, 9, 7, 0, 7});
    SurveyDesign design = SurveyDesign.over(List.of(room), STATED, Drift.LINEAR, 1e-6);
    for (int i = 0; i < 20; i++) {
      assertTrue(design.next());
    }
    List<SpotReason> reasons = design.chosen().stream().map(PlannedSpot::why).toList();
    assertEquals(reasons.stream().sorted().toList(), reasons);
    assertEquals(4, reasons.stream().filter(why -> why == SpotReason.CORNER).count());
    // 9 - 0.6 m in 3 parts, 7 - 0.6 m in 2: two and one places a wall.
    assertEquals(6, reasons.stream().filter(why -> why == SpotReason.WALL).count());
  }

  /** An inner corner of an L is no corner to read; a bay of 24 short walls has none. */
  @Test
  void cornersAreThoseThatPointOutward() {
    assertEquals(5, corners(TestFloors.L_ROOM));
    assertEquals(3, corners(new double[] {0, 0, 6, 0, 0, 5}));
    double[] round = new double[48];
    for (int i = 0; i < 24; i++) {
      round[2 * i] = 3 * Math.cos(i * Math.PI / 12);
      round[2 * i + 1] = 3 * Math.sin(i * Math.PI / 12);
    }
    assertEquals(0, corners(round));
  }

  private static long corners(double[] ring) {
    return EdgeSpots.of(0, TestFloors.room("r", ring)).stream()
        .filter(spot -> spot.why() == SpotReason.CORNER)
        .count();
  }

  @Test
  void everyPlaceLiesInItsRoomAndApart() {
    Random random = new Random(11);
    for (int i = 0; i < 12; i++) {
      Room room = TestFloors.room("crooked", TestFloors.crooked(random));
      Polygon polygon = room.outline().polygon();
      SurveyDesign design = SurveyDesign.over(List.of(room), STATED, Drift.LINEAR, 1e-6);
      int count = 0;
      while (count < 25 && design.next()) {
        count++;
      }
      assertTrue(count > 3, "room " + i);
      for (PlannedSpot spot : design.chosen()) {
        var at = new GeometryFactory().createPoint(new Coordinate(spot.x(), spot.y()));
        assertTrue(polygon.contains(at), spot.toString());
        for (PlannedSpot other : design.chosen()) {
          assertTrue(other == spot || other.distance(spot) >= SurveyDesign.APART, spot.toString());
        }
      }
    }
  }

  @Test
  void narrowRoomsAndManyCornersAreAnswered() {
    Room slot = TestFloors.room("slot", new double[] {0, 0, 3, 0, 3, 0.15, 0, 0.15});
    SurveyDesign narrow = SurveyDesign.over(List.of(slot), STATED, Drift.LINEAR, 1e-6);
    assertTrue(narrow.next(), "at least one place");
    double[] saw = new double[4 * 700];
    for (int i = 0; i < 700; i++) {
      saw[4 * i] = 2 * i;
      saw[4 * i + 2] = 2 * i + 1;
      saw[4 * i + 3] = -2;
    }
    saw[4 * 699 + 2] = 1_400;
    saw[4 * 699 + 3] = 5;
    saw[1] = 5;
    SurveyDesign jagged =
        SurveyDesign.over(List.of(TestFloors.room("saw", saw)), STATED, Drift.LINEAR, 1e-6);
    assertTrue(jagged.next());
    assertFalse(jagged.edgesChosen());
  }
}
