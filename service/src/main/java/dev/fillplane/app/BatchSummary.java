package dev.fillplane.app;

import dev.fillplane.client.generated.model.Batch;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;

/** The first batches of a pour in columns that can be read aloud, by the clock if it is told. */
final class BatchSummary {

  private static final int MOST_ROWS = 20;
  private static final String COLUMNS = "  %-14s %5s %4s %8s %11s %11s   %s%n";

  private final List<Batch> batches;
  private final String liquid;

  BatchSummary(List<Batch> batches, boolean metric) {
    this.batches = batches;
    liquid = metric ? " L" : " qt";
  }

  void print(PrintStream out) {
    if (batches.isEmpty()) {
      return;
    }
    out.println("Batches");
    out.printf(
        Locale.ROOT, COLUMNS, "bay", "batch", "bags", "water", "open bags", "on floor", "ribbons");
    batches.stream().limit(MOST_ROWS).forEach(batch -> row(batch, out));
    if (batches.size() > MOST_ROWS) {
      out.println("  ...");
    }
  }

  private void row(Batch batch, PrintStream out) {
    boolean clock = batch.getClock() != null;
    out.printf(
        Locale.ROOT,
        COLUMNS,
        batch.getBay(),
        batch.getNumber(),
        batch.getBags(),
        String.format(Locale.ROOT, "%.1f", batch.getWater()) + liquid,
        clock ? batch.getClock().getMixStart() : minutes(batch.getMixStart()),
        clock ? batch.getClock().getPlaced() : minutes(batch.getPlaced()),
        batch.getFirstRibbon().equals(batch.getLastRibbon())
            ? batch.getFirstRibbon()
            : batch.getFirstRibbon() + " to " + batch.getLastRibbon());
  }

  private static String minutes(double minutes) {
    return String.format(Locale.ROOT, "min %.1f", minutes);
  }
}
