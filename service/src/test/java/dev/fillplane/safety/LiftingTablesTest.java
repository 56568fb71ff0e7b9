package dev.fillplane.safety;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Against a separate transcript of NIOSH Pub. 94-110 (1994, revised September 2021), tables 5 and
 * 7; its numbers were seen identical in three independent public code bases.
 */
class LiftingTablesTest {

  private static JsonNode tables;

  @BeforeAll
  static void read() throws IOException {
    try (InputStream in = LiftingTablesTest.class.getResourceAsStream("lifting-tables.json")) {
      tables = new ObjectMapper().readTree(in);
    }
  }

  @Test
  void table5() {
    JsonNode table = tables.get("frequency_multiplier_table5");
    assertArrayEquals(numbers(table.get("F_lifts_per_min")), LiftingTables.FREQUENCIES);
    String[] columns = {
      "le1h_Vlt30", "le1h_Vge30", "gt1le2h_Vlt30", "gt1le2h_Vge30", "gt2le8h_Vlt30", "gt2le8h_Vge30"
    };
    for (int i = 0; i < columns.length; i++) {
      int column = i;
      double[] ours =
          IntStream.range(0, LiftingTables.FREQUENCY.length)
              .mapToDouble(row -> LiftingTables.FREQUENCY[row][column])
              .toArray();
      assertArrayEquals(numbers(table.get(columns[i])), ours, columns[i]);
    }
  }

  @Test
  void table7() {
    for (Coupling coupling : Coupling.values()) {
      JsonNode row =
          tables.get("coupling_multiplier_table7").get(coupling.name().toLowerCase(Locale.ROOT));
      assertEquals(row.get("Vlt30in").asDouble(), LiftingTables.coupling(coupling, false));
      assertEquals(row.get("Vge30in").asDouble(), LiftingTables.coupling(coupling, true));
    }
  }

  @Test
  void betweenAndBeyondTheRows() {
    assertFrequency(0.86, 3.5, LiftingDuration.SHORT, false);
    assertFrequency(0.09, 8.5, LiftingDuration.LONG, false);
    assertFrequency(1, 0, LiftingDuration.SHORT, false);
    assertFrequency(0.28, 15, LiftingDuration.SHORT, true);
    assertFrequency(0, 15.1, LiftingDuration.SHORT, true);
    assertFrequency(0.22, 11.5, LiftingDuration.MODERATE, true);
  }

  private static void assertFrequency(
      double expected, double lifts, LiftingDuration duration, boolean high) {
    assertEquals(expected, LiftingTables.frequency(lifts, duration, high), 1e-12);
  }

  private static double[] numbers(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false)
        .mapToDouble(JsonNode::asDouble)
        .toArray();
  }
}
