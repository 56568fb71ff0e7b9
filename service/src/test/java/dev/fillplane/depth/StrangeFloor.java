package dev.fillplane.depth;

import java.util.Random;
import java.util.function.DoubleBinaryOperator;

/**
 * Invented floors that no covariance of ours has drawn: waves, a hump and a hollow, a broken plane,
 * a worn step, rough walls, a dish. All of them lean a little.
 */
enum StrangeFloor {
  WAVES {
    @Override
    DoubleBinaryOperator shape(Random random, double width, double length) {
      return waves(random, 6, 2, 8, 0.004);
    }
  },
  HUMP_AND_HOLLOW {
    @Override
    DoubleBinaryOperator shape(Random random, double width, double length) {
      DoubleBinaryOperator hump = bump(random, width, length, between(random, 0.003, 0.012));
      DoubleBinaryOperator hollow = bump(random, width, length, between(random, -0.012, -0.003));
      return (x, y) -> hump.applyAsDouble(x, y) + hollow.applyAsDouble(x, y);
    }
  },
  BROKEN_PLANE {
    @Override
    DoubleBinaryOperator shape(Random random, double width, double length) {
      double direction = between(random, 0, 2 * Math.PI);
      double at = between(random, -1, 1);
      double slope = between(random, 0.001, 0.006) * (random.nextBoolean() ? 1 : -1);
      return (x, y) -> slope * Math.abs(along(x - width / 2, y - length / 2, direction) - at);
    }
  },
  WORN_STEP {
    @Override
    DoubleBinaryOperator shape(Random random, double width, double length) {
      double direction = between(random, 0, 2 * Math.PI);
      double at = between(random, -1, 1);
      double jump = between(random, 0.002, 0.008);
      double worn = between(random, 0.2, 0.6);
      return (x, y) ->
          jump / 2 * Math.tanh((along(x - width / 2, y - length / 2, direction) - at) / worn);
    }
  },
  ROUGH_WALLS {
    @Override
    DoubleBinaryOperator shape(Random random, double width, double length) {
      DoubleBinaryOperator rough = waves(random, 8, 0.4, 1.5, 0.0015);
      DoubleBinaryOperator slow = waves(random, 3, 3, 8, 0.003);
      double rise = between(random, -0.005, 0.005);
      return (x, y) -> {
        double wall = Math.min(Math.min(x, width - x), Math.min(y, length - y));
        double near = Math.exp(-Math.max(0, wall) / 0.5);
        return rough.applyAsDouble(x, y) * near + slow.applyAsDouble(x, y) + rise * near;
      };
    }
  },
  DISH {
    @Override
    DoubleBinaryOperator shape(Random random, double width, double length) {
      double depth = between(random, -0.01, 0.01);
      DoubleBinaryOperator waves = waves(random, 4, 1, 4, 0.002);
      return (x, y) -> {
        double u = 2 * x / width - 1;
        double v = 2 * y / length - 1;
        return depth * (u * u + v * v) + waves.applyAsDouble(x, y);
      };
    }
  };

  abstract DoubleBinaryOperator shape(Random random, double width, double length);

  /** A floor of this kind in a room from the origin. */
  DoubleBinaryOperator draw(Random random, double width, double length) {
    DoubleBinaryOperator shape = shape(random, width, length);
    double leanX = between(random, -0.002, 0.002);
    double leanY = between(random, -0.002, 0.002);
    return (x, y) -> shape.applyAsDouble(x, y) + leanX * x + leanY * y;
  }

  static double between(Random random, double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  private static double along(double x, double y, double direction) {
    return x * Math.cos(direction) + y * Math.sin(direction);
  }

  private static DoubleBinaryOperator bump(
      Random random, double width, double length, double height) {
    double x0 = between(random, 0, width);
    double y0 = between(random, 0, length);
    double radius = between(random, 0.7, 2);
    return (x, y) -> height * Math.exp(-Math.pow(Math.hypot(x - x0, y - y0) / radius, 2));
  }

  /** Cosines with directions, phases and lengths at random; {@code spread} is their deviation. */
  private static DoubleBinaryOperator waves(
      Random random, int count, double shortest, double longest, double spread) {
    double[] kx = new double[count];
    double[] ky = new double[count];
    double[] phase = new double[count];
    for (int i = 0; i < count; i++) {
      double direction = between(random, 0, 2 * Math.PI);
      double number = 2 * Math.PI / between(random, shortest, longest);
      kx[i] = number * Math.cos(direction);
      ky[i] = number * Math.sin(direction);
      phase[i] = between(random, 0, 2 * Math.PI);
    }
    double height = spread * Math.sqrt(2.0 / count);
    return (x, y) -> {
      double sum = 0;
      for (int i = 0; i < count; i++) {
        sum += height * Math.cos(kx[i] * x + ky[i] * y + phase[i]);
      }
      return sum;
    };
  }
}
