package dev.fillplane.survey;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Seeded surveys whose setups all hang together. */
final class RandomNetwork {

  private RandomNetwork() {}

  /** Up to 6 setups and 20 points; benchmarks, errors of setups and repeated readings or not. */
  static Survey make(long seed) {
    Random random = new Random(seed);
    int setups = 1 + random.nextInt(6);
    int points = 3 + random.nextInt(18);
    double[] elevation = random.doubles(points, -0.02, 0.02).toArray();
    List<Setup> all = new ArrayList<>();
    int common = random.nextInt(points);
    for (int s = 0; s < setups; s++) {
      double plane = 1 + random.nextDouble();
      double error = random.nextInt(3) == 0 ? 0.0005 + 0.003 * random.nextDouble() : 0.001;
      List<Reading> readings = new ArrayList<>();
      readings.add(reading(common, plane, elevation, error, random));
      for (int k = random.nextInt(2 * points); k >= 0; k--) {
        int point = random.nextInt(points);
        readings.add(reading(point, plane, elevation, error, random));
        common = random.nextInt(3) == 0 ? point : common;
      }
      all.add(
          new Setup(
              "S" + s,
              readings,
              error == 0.001 ? OptionalDouble.empty() : OptionalDouble.of(error),
              OptionalDouble.empty(),
              OptionalDouble.empty()));
    }
    List<Benchmark> benchmarks = new ArrayList<>();
    for (int b = random.nextInt(3); b > 0; b--) {
      String point = all.get(random.nextInt(setups)).readings().get(0).point();
      if (benchmarks.stream().noneMatch(one -> one.point().equals(point))) {
        benchmarks.add(new Benchmark(point, elevation[Integer.parseInt(point)]));
      }
    }
    return with(all, benchmarks);
  }

  private static Reading reading(
      int point, double plane, double[] elevation, double error, Random random) {
    double blunder = random.nextInt(20) == 0 ? 0.015 : 0;
    return new Reading(
        String.valueOf(point),
        OptionalDouble.of(point),
        OptionalDouble.of(point * 7 % 5),
        plane - elevation[point] + error * random.nextGaussian() + blunder);
  }

  static Survey with(List<Setup> setups, List<Benchmark> benchmarks) {
    return with(setups, benchmarks, 0);
  }

  /** The same with lasers that may be tilted by {@code tilt}. */
  static Survey with(List<Setup> setups, List<Benchmark> benchmarks, double tilt) {
    return new Survey(
        setups,
        benchmarks,
        List.of(),
        Optional.empty(),
        null,
        tilt,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        List.of());
  }

  /** The same readings in another order within each setup. */
  static Survey shuffled(Survey survey, Random random) {
    List<Setup> setups = new ArrayList<>();
    for (Setup setup : survey.setups()) {
      List<Reading> readings = new ArrayList<>(setup.readings());
      Collections.shuffle(readings, random);
      setups.add(new Setup(setup.id(), readings, setup.error(), setup.x(), setup.y()));
    }
    return with(setups, survey.benchmarks(), survey.laserTilt());
  }
}
