package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.distance.DistanceOp;

/** Floors through many readings; all of them invented. */
class DenseSurfaceTest {

  private static final double[] AT_X = new Random(1).doubles(400, -8, 18).toArray();
  private static final double[] AT_Y = new Random(2).doubles(400, -8, 14).toArray();

  @ParameterizedTest
  @EnumSource(names = {"NATURAL_NEIGHBOUR", "TRIANGLES"})
  void planesAreExactInAndOutsideTheHull(Method method) {
    for (int count : new int[] {3, 4, 9, 300}) {
      DenseSurface surface =
          DenseSurface.fit(Floors.scattered(count, count, DenseSurfaceTest::plane), method);
      for (int i = 0; i < AT_X.length; i++) {
        double exact = plane(AT_X[i], AT_Y[i]);
        assertEquals(exact, surface.elevation(AT_X[i], AT_Y[i]), 1e-13, count + " readings");
      }
    }
  }

  /** In a ring every reading is a neighbour of every position. */
  @Test
  void ringsOfManyReadingsAreLaidOnTriangles() {
    assertEquals(Method.NATURAL_NEIGHBOUR, methodFor(ring(150)));
    assertEquals(Method.TRIANGLES, methodFor(ring(3_000)));
    assertEquals(Method.NATURAL_NEIGHBOUR, methodFor(Floors.scattered(3_000, 1, Floors::bumpy)));
  }

  private static Method methodFor(Spots spots) {
    return DenseSurface.fit(spots, Method.NATURAL_NEIGHBOUR).summary().method();
  }

  private static Spots ring(int count) {
    double[] x = new double[count];
    double[] y = new double[count];
    Arrays.setAll(x, i -> 3 + 2 * Math.cos(2 * Math.PI * i / count));
    Arrays.setAll(y, i -> 2 + 2 * Math.sin(2 * Math.PI * i / count));
    double[] variance = new double[count];
    Arrays.fill(variance, 1e-6);
    return new Spots(x, y, new double[count], variance);
  }

  private static double plane(double x, double y) {
    return 0.25 + 0.0035 * x - 0.002 * y;
  }

  @ParameterizedTest
  @EnumSource(names = {"NATURAL_NEIGHBOUR", "TRIANGLES"})
  void passesThroughTheReadings(Method method) {
    Spots spots = Floors.scattered(500, 5, Floors::bumpy);
    DenseSurface surface = DenseSurface.fit(spots, method);
    assertArrayEquals(spots.elevation(), surface.elevations(spots.x(), spots.y()), 1e-12);
  }

  @ParameterizedTest
  @EnumSource(names = {"NATURAL_NEIGHBOUR", "TRIANGLES"})
  void bulkIsAsOneByOne(Method method) {
    DenseSurface surface = DenseSurface.fit(Floors.scattered(500, 5, Floors::bumpy), method);
    double[] all = surface.elevations(AT_X, AT_Y);
    for (int i = 0; i < all.length; i++) {
      assertEquals(all[i], surface.elevation(AT_X[i], AT_Y[i]), 1e-12);
    }
  }

  @ParameterizedTest
  @EnumSource(names = {"NATURAL_NEIGHBOUR", "TRIANGLES"})
  void orderDoesNotMatter(Method method) {
    Spots spots = withDoubles(Floors.scattered(700, 9, Floors::bumpy));
    List<Integer> order = new ArrayList<>(IntStream.range(0, spots.count()).boxed().toList());
    Collections.shuffle(order, new Random(4));
    Spots shuffled = picked(spots, order.stream().mapToInt(Integer::intValue).toArray());
    DenseSurface one = DenseSurface.fit(spots, method);
    DenseSurface other = DenseSurface.fit(shuffled, method);
    assertArrayEquals(one.elevations(AT_X, AT_Y), other.elevations(AT_X, AT_Y), 0);
    assertEquals(one.summary(), other.summary());
    assertEquals(one.deviation(3, 3), other.deviation(3, 3), 0);
  }

  private static Spots withDoubles(Spots spots) {
    int[] all = IntStream.range(0, spots.count() + 60).map(i -> i % spots.count()).toArray();
    Spots more = picked(spots, all);
    for (int i = spots.count(); i < all.length; i++) {
      more.elevation()[i] += 0.002;
    }
    return more;
  }

  private static Spots picked(Spots spots, int[] order) {
    return new Spots(
        Arrays.stream(order).mapToDouble(i -> spots.x()[i]).toArray(),
        Arrays.stream(order).mapToDouble(i -> spots.y()[i]).toArray(),
        Arrays.stream(order).mapToDouble(i -> spots.elevation()[i]).toArray(),
        Arrays.stream(order).mapToDouble(i -> spots.variance()[i]).toArray());
  }

  @Test
  void readingsAtOnePlaceAreAveraged() {
    Spots spots = withDoubles(Floors.scattered(700, 9, Floors::bumpy));
    DenseSurface surface = DenseSurface.fit(spots, Method.NATURAL_NEIGHBOUR);
    assertEquals(700, surface.places());
    double lower = spots.elevation()[7];
    assertEquals(lower + 0.001, surface.elevation(spots.x()[7], spots.y()[7]), 1e-12);
  }

  @ParameterizedTest
  @EnumSource(names = {"NATURAL_NEIGHBOUR", "TRIANGLES"})
  void farFromTheOriginIsTheSame(Method method) {
    Spots near = Floors.scattered(400, 3, Floors::bumpy);
    Spots far = Floors.moved(near, 0, 1e6, -1e6);
    double[] x = Arrays.stream(AT_X).map(value -> value + 1e6).toArray();
    double[] y = Arrays.stream(AT_Y).map(value -> value - 1e6).toArray();
    assertArrayEquals(
        DenseSurface.fit(near, method).elevations(AT_X, AT_Y),
        DenseSurface.fit(far, method).elevations(x, y),
        1e-9);
  }

  @Test
  void clustersAndNearDoublesAreFinite() {
    Random random = new Random(8);
    double[] x = new double[600];
    double[] y = new double[600];
    for (int i = 0; i < x.length; i++) {
      double size = i % 3 == 0 ? 1e-10 : i % 3 == 1 ? 1e-3 : 5;
      x[i] = i % 7 + size * random.nextDouble();
      y[i] = i % 5 + size * random.nextDouble();
    }
    Spots spots = Floors.spots(x, y, Floors::bumpy);
    for (Method method : List.of(Method.NATURAL_NEIGHBOUR, Method.TRIANGLES)) {
      DenseSurface surface = DenseSurface.fit(spots, method);
      for (double elevation : surface.elevations(AT_X, AT_Y)) {
        assertEquals(0, elevation, 0.2);
      }
      assertTrue(Double.isFinite(surface.deviation(2, 2)));
      assertTrue(surface.leaveOneOut().standardized().length == 600);
    }
  }

  /** Plane of the readings plus what stands over it at the nearest place of the hull, by JTS. */
  @ParameterizedTest
  @EnumSource(names = {"NATURAL_NEIGHBOUR", "TRIANGLES"})
  void outsideTheHullItGoesOnFromTheNearestPlace(Method method) {
    Spots spots = Floors.scattered(200, 6, Floors::bumpy);
    DenseSurface surface = DenseSurface.fit(spots, method);
    MeanPlane plane = MeanPlane.of(spots.x(), spots.y(), spots.elevation());
    Geometry hull = KrigingReferenceTest.hull(spots.x(), spots.y());
    int outside = 0;
    for (int i = 0; i < AT_X.length; i++) {
      var at = hull.getFactory().createPoint(new Coordinate(AT_X[i], AT_Y[i]));
      if (!hull.covers(at)) {
        Coordinate nearest = DistanceOp.nearestPoints(hull, at)[0];
        double over = onTheHull(hull, spots, nearest) - plane.at(nearest.x, nearest.y);
        double expected = plane.at(AT_X[i], AT_Y[i]) + over;
        assertEquals(expected, surface.elevation(AT_X[i], AT_Y[i]), 1e-12);
        outside++;
      }
    }
    assertTrue(outside > 100);
  }

  /** Along an edge of the hull the floor is straight from corner to corner. */
  private static double onTheHull(Geometry hull, Spots spots, Coordinate at) {
    Coordinate[] corners = hull.getCoordinates();
    for (int i = 1; i < corners.length; i++) {
      double length = corners[i - 1].distance(corners[i]);
      double part = corners[i - 1].distance(at) / length;
      if (corners[i - 1].distance(at) + corners[i].distance(at) < length + 1e-12) {
        return height(spots, corners[i - 1]) * (1 - part) + height(spots, corners[i]) * part;
      }
    }
    throw new IllegalStateException("not on the hull");
  }

  private static double height(Spots spots, Coordinate corner) {
    return IntStream.range(0, spots.count())
        .filter(i -> spots.x()[i] == corner.x && spots.y()[i] == corner.y)
        .mapToDouble(i -> spots.elevation()[i])
        .findFirst()
        .orElseThrow();
  }

  @Test
  void deviationGrowsAwayFromTheReadings() {
    Spots spots = Floors.scattered(400, 3, Floors::bumpy);
    DenseSurface surface = DenseSurface.fit(spots, Method.NATURAL_NEIGHBOUR);
    double at = surface.deviation(spots.x()[0], spots.y()[0]);
    assertEquals(0.001, at, 0.0003);
    double before = surface.deviation(10.5, 3);
    for (double x = 11; x < 20; x++) {
      double next = surface.deviation(x, 3);
      assertTrue(next > before, "at " + x);
      before = next;
    }
  }

  /** Noise of the told size is no roughness: 1 mm sqrt(1/6 + 1/2) in the middle. */
  @Test
  void noiseAsToldIsNoRoughness() {
    Random random = new Random(5);
    DenseSurface surface =
        DenseSurface.fit(
            Floors.scattered(4_000, 3, (x, y) -> 0.001 * random.nextGaussian()),
            Method.NATURAL_NEIGHBOUR);
    assertEquals(0.00082, surface.deviation(5, 3), 0.00003);
  }

  @Test
  void deviationGrowsInAGap() {
    Spots all = Floors.scattered(2_000, 3, (x, y) -> 0.01 * Math.sin(9 * x) * Math.sin(8 * y));
    int[] around =
        IntStream.range(0, all.count())
            .filter(i -> Math.hypot(all.x()[i] - 5, all.y()[i] - 3) > 2)
            .toArray();
    Spots ring = picked(all, around);
    DenseSurface surface = DenseSurface.fit(ring, Method.NATURAL_NEIGHBOUR);
    assertTrue(surface.deviation(5, 3) > 2 * surface.deviation(ring.x()[0], ring.y()[0]));
  }

  @Test
  void whatCannotBeAFloorIsRefused() {
    Spots line = Floors.spots(new double[] {0, 1, 2}, new double[] {0, 1, 2}, (x, y) -> 0);
    assertThrows(IllegalArgumentException.class, () -> DenseSurface.fit(line, Method.TRIANGLES));
    Spots floor = Floors.scattered(9, 1, Floors::bumpy);
    assertThrows(IllegalArgumentException.class, () -> DenseSurface.fit(floor, Method.KRIGING));
  }
}
