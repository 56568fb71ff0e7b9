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

  /** Constant, formulas and bounds of the inch-pound form, as the transcript has them. */
  @Test
  void constantAndBounds() {
    JsonNode limits = tables.get("limits");
    double reach = limits.at("/H_max/in").asDouble();
    double high = limits.at("/V_max/in").asDouble();
    double twist = limits.get("A_max_deg").asDouble();
    assertEquals(tables.at("/load_constant/lb").asDouble(), recommended(10, 30, 0, 40), 1e-9);
    assertEquals(51 * 10 / reach, recommended(reach, 30, 0, 40), 1e-9);
    assertEquals(0.0, recommended(reach + 0.01, 30, 0, 40));
    assertEquals(51 * (1 - 0.0075 * 40) * (0.82 + 1.8 / 40), recommended(10, high, 0, 30), 1e-9);
    assertEquals(0.0, recommended(10, high + 0.01, 0, 40));
    assertEquals(51 * (1 - 0.0032 * twist), recommended(10, 30, twist, 40), 1e-9);
    assertEquals(0.0, recommended(10, 30, twist + 0.1, 40));
    assertEquals(51, recommended(limits.at("/H_min/in").asDouble() - 5, 30, 0, 35), 1e-9);
    assertEquals(0.0, recommended(10, 0, 0, limits.at("/D_max/in").asDouble() + 0.01));
    assertEquals(0.2, limits.get("F_min").asDouble());
    assertEquals(15.0, limits.get("F_max").asDouble());
    assertEquals(30.0, tables.at("/frequency_multiplier_table5/V_boundary/in").asDouble());
  }

  /** At the origin, in lb, for a good hold and a lift now and then; inches and degrees. */
  private static double recommended(double reach, double from, double twist, double to) {
    HandPosition origin = new HandPosition(reach * 0.0254, from * 0.0254, Math.toRadians(twist));
    HandPosition end = new HandPosition(0.254, to * 0.0254, 0.0);
    LiftingTask task = new LiftingTask(20, origin, end, 0.2, 1, Coupling.GOOD, false);
    return LiftingEquation.of(task).origin().recommendedMass() / 0.45359237;
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
