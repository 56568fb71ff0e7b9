package dev.fillplane.bench;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;

/** Plans of the sample floor for one caller, for four, beside light ones, and for far too many. */
final class PlanLoad {

  private static final String PLANS = "/v1/plans";
  private static final int WARM_UP = 150;
  private static final int MANY = 64;

  private final ServiceProcess service;
  private final byte[] sample = Load.example("sample-metric.json");
  private final Table table =
      Table.of("", "a second", "p50, ms", "p90, ms", "p99, ms", "CPU, ms", "bytes");
  private final Table goals = Table.of("goal", "measured", "wanted", "");

  private PlanLoad(ServiceProcess service) {
    this.service = service;
  }

  static String measure() throws IOException, InterruptedException {
    try (ServiceProcess service = ServiceProcess.jar("-Xmx512m")) {
      PlanLoad load = new PlanLoad(service);
      load.plans();
      load.beside();
      load.others();
      String most = load.tooMany();
      return "### Plans\n\nThe sample floor, in 512 MB of heap, after "
          + 4 * WARM_UP
          + " plans that are not counted.\n\n"
          + load.table
          + "\n"
          + most
          + "\n"
          + load.goals;
    }
  }

  private void plans() throws InterruptedException {
    callers(PLANS, sample, 4).call(WARM_UP);
    Calls one = row("plans, 1 caller", callers(PLANS, sample, 1), 10);
    Calls four = row("plans, 4 callers", callers(PLANS, sample, 4), 15);
    goals.atMost("p50 of a plan, 1 caller", one.quantile(0.5), 30, " ms");
    goals.atLeast("plans a second, 4 callers", four.perSecond(), 45, "");
    goals.atMost("p99 of a plan, 4 callers", four.quantile(0.99), 150, " ms");
  }

  /** Light requests come at even times, whatever the heavy ones do. */
  private void beside() throws InterruptedException {
    Callers light = callers("/v1/bag-counts", Load.example("bag-count.json"), 2);
    light.callFor(2);
    row("bag counts alone, 2 callers, 100 a second", light.paced(50), 5);
    CompletableFuture<Calls> heavy = background(callers(PLANS, sample, 8), 12);
    callers(PLANS, sample, 1).call(1);
    Calls calls = row("the same while 8 callers want plans", light.paced(50), 10);
    heavy.join();
    goals.atMost("p99 of bag counts beside 8 plans", calls.quantile(0.99), 50, " ms");
  }

  private void others() throws InterruptedException {
    Map<String, String> bodies = new LinkedHashMap<>();
    for (String path : new String[] {"depth-maps", "timelines", "plan-shapes", "pour-pages"}) {
      bodies.put(path, "sample-metric.json");
    }
    bodies.put("pour-sheets", "sample-metric.json");
    bodies.put("line-items", "line-items.json");
    bodies.put("flatness-checks", "flatness-lines.json");
    bodies.put("air-checks", "air-check.json");
    for (Map.Entry<String, String> one : bodies.entrySet()) {
      Callers callers = callers("/v1/" + one.getKey(), Load.example(one.getValue()), 1);
      callers.callFor(2);
      row("`/v1/" + one.getKey() + "`, 1 caller", callers, 3);
    }
  }

  private String tooMany() throws InterruptedException {
    Calls calls = callers(PLANS, sample, MANY).callFor(15);
    int[] heap = service.heap();
    int odd =
        calls.statuses().entrySet().stream()
            .filter(entry -> entry.getKey() != 200 && entry.getKey() != 503)
            .mapToInt(Map.Entry::getValue)
            .sum();
    goals.atMost("answers to " + MANY + " callers other than 200 and 503", odd, 0, "");
    return MANY
        + " callers of plans for 15 s: answers by status (0: the connection broke) "
        + calls.statuses()
        + ", p50 "
        + Table.figures(calls.quantile(0.5))
        + " ms, p99 "
        + Table.figures(calls.quantile(0.99))
        + " ms. In all of this run at most "
        + heap[0]
        + " MB of heap were in use before a collection and "
        + heap[1]
        + " MB after one.\n";
  }

  private Callers callers(String path, byte[] body, int count) {
    return Callers.of(service, path, body, count);
  }

  private Calls row(String what, Callers callers, double seconds) throws InterruptedException {
    double before = service.cpu();
    Calls calls = callers.callFor(seconds);
    double cpu = (service.cpu() - before) * 1000 / Math.max(1, calls.count());
    table.row(
        what,
        calls.perSecond(),
        calls.quantile(0.5),
        calls.quantile(0.9),
        calls.quantile(0.99),
        what.startsWith("the same while") ? "-" : Table.figures(cpu),
        calls.bytes());
    return calls;
  }

  private static CompletableFuture<Calls> background(Callers callers, double seconds) {
    return CompletableFuture.supplyAsync(
        () -> {
          try {
            return callers.callFor(seconds);
          } catch (InterruptedException e) {
            throw new IllegalStateException(e);
          }
        },
        task -> new Thread(task, "heavy").start());
  }
}
