package dev.fillplane.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.client.generated.model.Batch;
import dev.fillplane.client.generated.model.BatchClock;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class BatchSummaryTest {

  private static final String NAMES =
      "  bay            batch bags    water   open bags    on floor   ribbons";

  @Test
  void minutesFromTheStart() {
    assertEquals(
        List.of(
            "Batches",
            NAMES,
            "  hall               3    1    5.0 L     min 8.5    min 13.1   4 to 5"),
        print(List.of(batch()), true));
  }

  @Test
  void byTheClockInQuarts() {
    Batch batch = batch().lastRibbon(4).clock(new BatchClock().mixStart("07:38").placed("07:43"));
    assertEquals(
        List.of(
            "Batches", NAMES, "  hall               3    1   5.0 qt       07:38       07:43   4"),
        print(List.of(batch), false));
  }

  @Test
  void twentyRowsAtMost() {
    List<String> all = print(Collections.nCopies(20, batch()), true);
    assertEquals(22, all.size());
    List<String> some = print(Collections.nCopies(21, batch()), true);
    assertEquals(23, some.size());
    assertEquals("  ...", some.get(22));
  }

  @Test
  void nothingWhereNothingIsPoured() {
    assertEquals(List.of(), print(List.of(), true));
  }

  private static Batch batch() {
    return new Batch()
        .bay("hall")
        .number(3)
        .bags(1)
        .water(5.0)
        .mixStart(8.5)
        .placed(13.08)
        .firstRibbon(4)
        .lastRibbon(5);
  }

  private static List<String> print(List<Batch> batches, boolean metric) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    new BatchSummary(batches, metric).print(out);
    return bytes.toString(StandardCharsets.UTF_8).lines().toList();
  }
}
