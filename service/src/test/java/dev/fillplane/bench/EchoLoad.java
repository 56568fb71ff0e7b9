package dev.fillplane.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Bag counts beside an echo of the same JSON, in one process and in windows that take turns, so
 * that both meet the same machine and the same state of the compiler.
 */
final class EchoLoad {

  private static final int CALLERS = 8;
  private static final int WINDOWS = 9;
  private static final double WINDOW = 1;
  private static final double WARM_UP = 5;

  private EchoLoad() {}

  static String measure() throws IOException, InterruptedException {
    try (ServiceProcess service =
        ServiceProcess.main("dev.fillplane.web.EchoService", "-Xmx512m")) {
      byte[] body = Load.example("bag-count.json");
      Windows counts = new Windows(service, "/v1/bag-counts", body);
      Windows answers = new Windows(service, "/v1/known-answers", body);
      Windows echoes = new Windows(service, "/v1/echoes", body);
      List<Windows> all = List.of(counts, answers, echoes);
      for (Windows one : all) {
        one.callers.callFor(WARM_UP);
      }
      for (int i = 0; i < WINDOWS; i++) {
        for (Windows one : all) {
          one.next();
        }
      }
      return told(counts, answers, echoes);
    }
  }

  private static String told(Windows counts, Windows answers, Windows echoes) {
    Table table =
        Table.of("", "a second (least, most)", "p50, ms", "p99, ms", "CPU, us", "bytes out");
    counts.row(table, "`/v1/bag-counts`");
    answers.row(table, "bind the request, write an answer known before");
    echoes.row(table, "bind the request, write it back");
    Table goals =
        Table.of("goal", "measured", "wanted", "")
            .atLeast("throughput against the known answer", counts.part(answers), 0.7, "")
            .atLeast("throughput against the request back", counts.part(echoes), 0.7, "");
    return "### Bag counts and an echo\n\n"
        + CALLERS
        + " callers, "
        + WINDOWS
        + " windows of "
        + Table.figures(WINDOW)
        + " s for each, taking turns; medians.\n\n"
        + table
        + "\n"
        + goals;
  }

  /** The windows of one operation. */
  private static final class Windows {

    private final ServiceProcess service;
    private final Callers callers;
    private final List<Calls> windows = new ArrayList<>();
    private double cpu;

    Windows(ServiceProcess service, String path, byte[] body) {
      this.service = service;
      callers = Callers.of(service, path, body, CALLERS);
    }

    void next() throws InterruptedException {
      double before = service.cpu();
      windows.add(callers.callFor(WINDOW));
      cpu += service.cpu() - before;
    }

    /** Throughput as a part of that of the other, by the windows that stand side by side. */
    double part(Windows other) {
      double[] parts = new double[windows.size()];
      Arrays.setAll(
          parts, i -> windows.get(i).perSecond() / Math.max(1, other.windows.get(i).perSecond()));
      return Stopwatch.middle(parts);
    }

    void row(Table table, String what) {
      double[] rates = windows.stream().mapToDouble(Calls::perSecond).toArray();
      Calls all = new Calls();
      windows.forEach(all::add);
      table.row(
          what,
          Stopwatch.told(rates),
          all.quantile(0.5),
          all.quantile(0.99),
          cpu * 1e6 / all.count(),
          all.bytes());
    }
  }
}
