package dev.fillplane.render;

import dev.fillplane.pour.Batch;
import dev.fillplane.pour.BatchClock;
import dev.fillplane.quantity.UnitSystem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * The batches of a pour as separated values (RFC 4180): a row of names with units, then one row a
 * batch in the order of mixing.
 *
 * <p>Rounded to what people can keep to: minutes to 0.1, water to a {@link JugMark}. Times count
 * from the start of the work, ages from first water. The edge age is empty where a batch meets no
 * edge. Times by the clock stand in the last columns if the crew tells a start. A text that a
 * spreadsheet would take for a formula is told with an apostrophe before it.
 */
public final class BatchList {

  private static final List<String> CLOCK =
      List.of("mix start (clock)", "ready (clock)", "placed (clock)");

  /** The full-width signs are taken for the others by some spreadsheets. */
  private static final String OPENS_A_FORMULA = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

  private final UnitSystem units;
  private final boolean clock;

  private BatchList(UnitSystem units, boolean clock) {
    this.units = units;
    this.clock = clock;
  }

  /** The table of {@code batches}; the names alone if there are none. */
  public static String of(List<Batch> batches, UnitSystem units) {
    boolean clock = batches.stream().anyMatch(batch -> batch.clock().isPresent());
    return new BatchList(units, clock).table(batches);
  }

  private String table(List<Batch> batches) {
    StringBuilder text = new StringBuilder();
    try (CSVPrinter table = new CSVPrinter(text, CSVFormat.RFC4180)) {
      table.printRecord(names());
      for (Batch batch : batches) {
        table.printRecord(row(batch));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private List<String> names() {
    String liquid = units == UnitSystem.METRIC ? "L" : "qt";
    List<String> names = new ArrayList<>(List.of("bay", "batch", "bags", "water (" + liquid + ")"));
    names.addAll(
        List.of(
            "mix start (min)",
            "first water (min)",
            "ready (min)",
            "placed (min)",
            "rolled (min)",
            "first ribbon",
            "last ribbon",
            "age when placed (min)",
            "age of the edge met (min)"));
    if (clock) {
      names.addAll(CLOCK);
    }
    return names;
  }

  private List<Object> row(Batch batch) {
    List<Object> row = new ArrayList<>();
    row.add(plainText(batch.bay()));
    row.add(batch.number());
    row.add(batch.bags());
    row.add(JugMark.of(batch.water(), units).toPlainString());
    row.add(Minutes.tenth(batch.mixStart()));
    row.add(Minutes.tenth(batch.firstWater()));
    row.add(Minutes.tenth(batch.ready()));
    row.add(Minutes.tenth(batch.placed()));
    row.add(Minutes.tenth(batch.rolled()));
    row.add(batch.firstRibbon());
    row.add(batch.lastRibbon());
    row.add(Minutes.tenth(batch.age()));
    row.add(minutes(batch.edgeAge()));
    if (clock) {
      row.addAll(batch.clock().map(BatchList::cells).orElse(List.of("", "", "")));
    }
    return row;
  }

  private static List<String> cells(BatchClock clock) {
    return List.of(clock.mixStart(), clock.ready(), clock.placed());
  }

  private static String minutes(OptionalDouble seconds) {
    return seconds.isPresent() ? Minutes.tenth(seconds.getAsDouble()) : "";
  }

  private static String plainText(String text) {
    String told = text.stripLeading();
    boolean formula = !told.isEmpty() && OPENS_A_FORMULA.indexOf(told.charAt(0)) >= 0;
    return formula ? "'" + text : text;
  }
}
