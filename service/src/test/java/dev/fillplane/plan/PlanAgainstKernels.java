package dev.fillplane.plan;

import dev.fillplane.bench.Report;
import dev.fillplane.bench.Stopwatch;
import dev.fillplane.bench.Table;
import dev.fillplane.openapi.Contract;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Json;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * The whole plan of the sample floor against the sum of its {@link PlanKernels}, in one process, in
 * turns, by the CPU time of the thread; three processes, one after the other.
 */
public final class PlanAgainstKernels {

  private static final int PROCESSES = 3;
  private static final int WARM_UP = 300;
  private static final int ROUNDS = 20;
  private static final String PLAN = "the plan";

  private PlanAgainstKernels() {}

  /** Starts the processes and tells what they found. */
  public static void main(String[] args) throws IOException, InterruptedException {
    if (Stopwatch.isProcess(args)) {
      measure();
      return;
    }
    Report report = new Report("plan-against-kernels", "The plan against its kernels");
    List<Map<String, double[]>> runs = new ArrayList<>();
    for (int i = 0; i < PROCESSES; i++) {
      runs.add(Stopwatch.inProcess(PlanAgainstKernels.class.getName()));
    }
    report.add(told(runs));
  }

  private static void measure() throws IOException {
    byte[] sample = Json.canonical(Contract.load().example("sample-metric.json"));
    PlanRequest request = Json.read(Json.tree(sample), PlanRequest.class, UnitSystem.METRIC);
    PlanKernels kernels = new PlanKernels(request);
    Map<String, Supplier<?>> works = new LinkedHashMap<>();
    works.put(PLAN, () -> Planner.plan(request, new Computed("bench", "bench", List.of())));
    works.putAll(kernels.all());
    new Stopwatch(works).run(WARM_UP, ROUNDS).print();
  }

  private static String told(List<Map<String, double[]>> runs) {
    Table table = Table.of("", "CPU, ms (least, most)", "in parts of the plan");
    double plan = Stopwatch.middle(runs, PLAN);
    double[] sums = new double[runs.size()];
    for (String name : runs.get(0).keySet()) {
      table.row(name, Stopwatch.told(runs, name), Stopwatch.middle(runs, name) / plan);
      for (int i = 0; i < sums.length && !name.equals(PLAN); i++) {
        sums[i] += runs.get(i).get(name)[0];
      }
    }
    double[] ratios = new double[sums.length];
    for (int i = 0; i < sums.length; i++) {
      ratios[i] = runs.get(i).get(PLAN)[0] / sums[i];
    }
    table.row("**sum of the kernels**", Stopwatch.told(sums), Stopwatch.middle(sums) / plan);
    Table goals =
        Table.of("goal", "measured", "wanted", "")
            .atMost("plan against the sum of its kernels", Stopwatch.middle(ratios), 1.3, "")
            .row("the same, least and most", Stopwatch.told(ratios), "", "");
    return "CPU of the thread, medians of "
        + ROUNDS
        + " rounds in each of "
        + PROCESSES
        + " processes, after "
        + WARM_UP
        + " plans; in brackets the least and the most of the processes.\n\n"
        + table
        + "\n"
        + goals;
  }
}
