package dev.fillplane.bench;

import java.util.OptionalDouble;

/** The goals that single kernels have, as far as they were run. */
final class KernelGoals {

  private static final String DENSE = "DenseFieldBenchmark";
  private static final String BARE = "bareTinfour";

  private final KernelResults results;
  private final Table table = Table.of("goal", "measured", "wanted", "");

  private KernelGoals(KernelResults results) {
    this.results = results;
  }

  static String of(KernelResults results) {
    KernelGoals goals = new KernelGoals(results);
    goals.time("SurveyToOddsBenchmark", "whole 60", "60 readings to odds", 20);
    goals.time("SurveyToOddsBenchmark", "whole 1000", "1,000 readings to odds", 1500);
    goals.time("StraightedgeBenchmark", "waves", "straightedge of 3 m on 60 m2", 10);
    goals.time("TargetBenchmark", "find LEVEL true", "level target with grinding", 2);
    goals.time("TargetBenchmark", "find PLANE true", "sloped target with grinding", 2);
    goals.time("CrewBenchmark", "run500Batches", "500 batches", 0.3);
    goals.time("CrewBenchmark", "ribbonsAndPour", "ribbons and pour of 60 m2", 8);
    goals.time("PlanBenchmark", "plan", "the whole plan, no HTTP and JSON", 30);
    for (String table : new String[] {"readings", "elevations"}) {
      goals.dense(table);
    }
    return goals.table.toString();
  }

  private void time(String type, String kernel, String what, double goal) {
    results.time(type, kernel).ifPresent(time -> table.atMost(what, time, goal, " ms"));
  }

  private void dense(String from) {
    for (String size : new String[] {"10000", "100000", "1000000"}) {
      OptionalDouble ours = results.cpu(DENSE, from + " " + size);
      OptionalDouble bare = results.cpu(DENSE, BARE + " " + size);
      if (ours.isPresent() && bare.isPresent()) {
        double part = ours.getAsDouble() / bare.getAsDouble();
        table.atMost("CPU of " + size + " " + from + " against bare Tinfour", part, 2, "");
      }
    }
    OptionalDouble few = results.cpu(DENSE, from + " 10000");
    OptionalDouble many = results.cpu(DENSE, from + " 1000000");
    if (few.isPresent() && many.isPresent()) {
      double exponent = Math.log10(many.getAsDouble() / few.getAsDouble()) / 2;
      table.atMost("growth of CPU, 10,000 to 1,000,000 " + from + ", exponent", exponent, 1.05, "");
    }
  }
}
