package dev.fillplane.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How long the jar takes from its start until it listens, and until it is ready. */
final class Starts {

  private static final int STARTS = 5;

  private Starts() {}

  static String measure(List<String> more) throws IOException, InterruptedException {
    List<String> options = new ArrayList<>(more);
    options.add(0, "-Xmx256m");
    double[] listening = new double[STARTS];
    double[] ready = new double[STARTS];
    double[] first = new double[STARTS];
    for (int i = 0; i < STARTS; i++) {
      try (ServiceProcess service = ServiceProcess.jar(options.toArray(String[]::new))) {
        listening[i] = service.listeningMillis();
        ready[i] = service.readyMillis();
        byte[] sample = Load.example("sample-metric.json");
        first[i] = Callers.of(service, "/v1/plans", sample, 1).call(1).quantile(0.5);
      }
    }
    Table table = Table.of("from the start of the process", "median", "least", "most");
    row(table, "to listening (it answers `/health/live`), ms", listening);
    row(table, "to ready (warmed up), ms", ready);
    row(table, "the first plan after that, ms", first);
    String goals =
        Table.of("goal", "measured", "wanted", "")
            .atMost("start to listening", Stopwatch.middle(listening), 2000, " ms")
            .toString();
    return "### Start\n\n"
        + STARTS
        + " starts with `"
        + String.join(" ", options)
        + "`.\n\n"
        + table
        + "\n"
        + goals;
  }

  private static void row(Table table, String what, double[] millis) {
    double[] sorted = millis.clone();
    Arrays.sort(sorted);
    table.row(what, sorted[STARTS / 2], sorted[0], sorted[STARTS - 1]);
  }
}
