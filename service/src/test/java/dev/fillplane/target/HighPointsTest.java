package dev.fillplane.target;

import static dev.fillplane.surface.TestFloors.crooked;
import static dev.fillplane.surface.TestFloors.room;
import static dev.fillplane.surface.TestFloors.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.surface.Spots;
import dev.fillplane.surface.TestFloors;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Highest points over planes, held against looking at every point. */
class HighPointsTest {

  private static HighPoints highs(DoubleBinaryOperator floor, double[] ring) {
    double[] x = {3.1, 2.2};
    double[] y = {2.1, 2.3};
    Spots readings =
        new Spots(
            x,
            y,
            new double[] {floor.applyAsDouble(3.1, 2.1), floor.applyAsDouble(2.2, 2.3)},
            new double[2]);
    return HighPoints.of(sample(floor, 0.13, room("r", ring)), readings, List.of("1", "2"));
  }

  private static Plane plane(Random random) {
    return new Plane(
        random.nextDouble() - 0.5,
        0.01 * (random.nextDouble() - 0.5),
        0.01 * (random.nextDouble() - 0.5));
  }

  private static double over(HighPoints highs, int i, Plane plane) {
    return highs.elevation(i) - plane.at(highs.x(i), highs.y(i));
  }

  private static int plainly(HighPoints highs, Plane plane) {
    int highest = 0;
    for (int i = 1; i < highs.count(); i++) {
      highest = over(highs, i, plane) > over(highs, highest, plane) ? i : highest;
    }
    return highest;
  }

  @Test
  void theFirstOfTheHighestIsFound() {
    Random random = new Random(21);
    for (int room = 0; room < 20; room++) {
      double[] ring = crooked(random);
      for (DoubleBinaryOperator floor :
          List.<DoubleBinaryOperator>of(TestFloors::waves, (x, y) -> 0.2, (x, y) -> 0.004 * x)) {
        HighPoints highs = highs(floor, ring);
        for (int i = 0; i < 20; i++) {
          Plane plane = i == 0 ? Plane.level(0) : plane(random);
          assertEquals(plainly(highs, plane), highs.highestOver(plane));
        }
      }
    }
  }

  @Test
  void nearPointsHaveAllThatStandSoHigh() {
    Random random = new Random(22);
    for (int room = 0; room < 20; room++) {
      HighPoints highs = highs(TestFloors::waves, crooked(random));
      Plane plane = plane(random);
      double height = over(highs, plainly(highs, plane), plane) - 0.0005 * random.nextDouble();
      List<Integer> near = highs.near(plane, height).boxed().toList();
      Set<Integer> known = near.stream().collect(Collectors.toSet());
      assertEquals(near.stream().sorted().toList(), near);
      assertTrue(near.size() < highs.count());
      for (int i = 0; i < highs.count(); i++) {
        assertTrue(over(highs, i, plane) < height || known.contains(i));
      }
    }
  }
}
