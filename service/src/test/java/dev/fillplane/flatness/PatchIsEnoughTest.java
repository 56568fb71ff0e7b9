package dev.fillplane.flatness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.room.Outline;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/** A floor ground and patched inside the outlines that are told keeps to its limit. */
class PatchIsEnoughTest {

  private static final double WIDTH = 6;
  private static final double LENGTH = 4;

  /** Outlines are good to 2 cm and slivers at walls left out: so much of a slope of 10 mm/m. */
  private static final double OUTLINES = 0.0004;

  @Test
  void nothingOverTheLimitIsLeft() {
    for (int seed = 0; seed < 8; seed++) {
      DoubleBinaryOperator floor = wavy(seed);
      GapLimit limit = new GapLimit(2, 0.004, 1);
      GrindAndPatch work = GrindAndPatch.of(List.of(hall()), floor, List.of(limit));
      assertTrue(plainGap(floor, 2, seed) > 0.005, "seed " + seed);
      assertTrue(work.humps().size() + work.hollows().size() > 1, "seed " + seed);
      double left = plainGap(corrected(floor, work, limit.gap()), 2, seed);
      assertTrue(left <= limit.gap() + OUTLINES, "seed " + seed + ": " + left);
    }
  }

  /** Ripples that the long edge allows and the short one does not. */
  @Test
  void shorterEdgeIsKeptAsWell() {
    DoubleBinaryOperator ripples = (x, y) -> 0.0015 * Math.sin(2 * Math.PI * x / 0.6) + 0.001 * x;
    GapLimit main = new GapLimit(3, 0.0036, 1);
    GapLimit shorter = new GapLimit(0.6, 0.0016, 1);
    assertEquals(List.of(), GrindAndPatch.of(List.of(hall()), ripples, List.of(main)).humps());
    GrindAndPatch work = GrindAndPatch.of(List.of(hall()), ripples, List.of(main, shorter));
    assertTrue(plainGap(ripples, 0.6, 1) > 0.0025);
    double left = plainGap(corrected(ripples, work, shorter.gap()), 0.6, 1);
    assertTrue(left <= shorter.gap() + OUTLINES, "left " + left);
  }

  @Test
  void volumesAreWhatTheCorrectionTakes() {
    for (int seed = 0; seed < 4; seed++) {
      DoubleBinaryOperator floor = wavy(seed);
      GrindAndPatch work = GrindAndPatch.of(List.of(hall()), floor, 0.004);
      DoubleBinaryOperator after = GrindAndPatch.after(hall(), floor, 0.004);
      double filled = 0;
      double cell = 0.02;
      for (double x = cell / 2; x < WIDTH; x += cell) {
        for (double y = cell / 2; y < LENGTH; y += cell) {
          double more = after.applyAsDouble(x, y) - floor.applyAsDouble(x, y);
          filled += Math.max(0, more) * cell * cell;
        }
      }
      assertEquals(filled, work.patchVolume(), 0.03 * filled + 1e-6);
      double listed = work.hollows().stream().mapToDouble(Hollow::volume).sum();
      assertEquals(work.patchVolume(), listed, 1e-9);
    }
  }

  @Test
  void areasAreThoseOfTheOutlines() {
    GrindAndPatch work = GrindAndPatch.of(List.of(hall()), wavy(2), 0.004);
    for (Hump hump : work.humps()) {
      assertEquals(hump.outline().polygon().getArea(), hump.area(), 0.1 * hump.area() + 0.03);
    }
  }

  /** Down or up to the band, but only inside the outlines. */
  private static DoubleBinaryOperator corrected(
      DoubleBinaryOperator floor, GrindAndPatch work, double gap) {
    List<IndexedPointInAreaLocator> parts =
        Stream.concat(
                work.humps().stream().map(Hump::outline),
                work.hollows().stream().map(Hollow::outline))
            .map(Outline::polygon)
            .map(IndexedPointInAreaLocator::new)
            .toList();
    DoubleBinaryOperator after = GrindAndPatch.after(hall(), floor, gap);
    return (x, y) -> {
      Coordinate at = new Coordinate(x, y);
      boolean worked = parts.stream().anyMatch(part -> part.locate(at) != Location.EXTERIOR);
      return worked ? after.applyAsDouble(x, y) : floor.applyAsDouble(x, y);
    };
  }

  /** Edges laid at random: the largest depth under any chord between two samples of each. */
  private static double plainGap(DoubleBinaryOperator floor, double edge, int seed) {
    Random random = new Random(seed);
    double largest = 0;
    for (int laid = 0; laid < 3000; laid++) {
      double angle = random.nextDouble() * Math.PI;
      double x = random.nextDouble() * WIDTH;
      double y = random.nextDouble() * LENGTH;
      double endX = x + edge * Math.cos(angle);
      double endY = y + edge * Math.sin(angle);
      if (endX > 0 && endX < WIDTH && endY < LENGTH) {
        largest = Math.max(largest, plainGap(floor, x, y, endX, endY));
      }
    }
    return largest;
  }

  private static double plainGap(
      DoubleBinaryOperator floor, double x, double y, double endX, double endY) {
    double[] heights = new double[25];
    for (int i = 0; i < heights.length; i++) {
      double share = i / (heights.length - 1.0);
      heights[i] = floor.applyAsDouble(x + share * (endX - x), y + share * (endY - y));
    }
    double largest = 0;
    for (int left = 0; left < heights.length; left++) {
      for (int right = left + 2; right < heights.length; right++) {
        for (int at = left + 1; at < right; at++) {
          double share = (at - left) / (double) (right - left);
          double chord = heights[left] + share * (heights[right] - heights[left]);
          largest = Math.max(largest, chord - heights[at]);
        }
      }
    }
    return largest;
  }

  private static DoubleBinaryOperator wavy(int seed) {
    Random random = new Random(seed);
    double a = 1.5 + random.nextDouble();
    double b = 1.5 + random.nextDouble();
    double c = 6 * random.nextDouble();
    return (x, y) -> 0.004 * Math.sin(a * x + c) * Math.cos(b * y) + 0.003 * x - 0.002 * y;
  }

  private static Polygon hall() {
    Coordinate corner = new Coordinate(0, 0);
    return new GeometryFactory()
        .createPolygon(
            new Coordinate[] {
              corner,
              new Coordinate(WIDTH, 0),
              new Coordinate(WIDTH, LENGTH),
              new Coordinate(0, LENGTH),
              corner
            });
  }
}
