package dev.fillplane.render;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.pour.Batch;
import dev.fillplane.pour.BatchClock;
import dev.fillplane.quantity.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BatchListTest {

  private static final String NAMES =
      "bay,batch,bags,water (L),mix start (min),first water (min),ready (min),placed (min),"
          + "rolled (min),first ribbon,last ribbon,age when placed (min),age of the edge met (min)";

  @Test
  void namesThenARowForEachBatch() {
    List<Batch> batches =
        List.of(
            batch("hall", 1, 0.005, OptionalDouble.empty(), Optional.empty()),
            batch("hall", 2, 0.005, OptionalDouble.of(444), Optional.empty()));
    assertEquals(
        NAMES
            + "\r\nhall,1,1,5.0,0.5,1.5,4.5,5.1,6.0,1,3,3.6,\r\n"
            + "hall,2,1,5.0,0.5,1.5,4.5,5.1,6.0,1,3,3.6,7.4\r\n",
        BatchList.of(batches, UnitSystem.METRIC));
  }

  @Test
  void clockInTheLastColumns() {
    Optional<BatchClock> clock = Optional.of(new BatchClock("07:30", "07:34", "07:35"));
    String[] lines =
        BatchList.of(
                List.of(batch("hall", 1, 0.005, OptionalDouble.empty(), clock)), UnitSystem.METRIC)
            .split("\r\n", -1);
    assertEquals(NAMES + ",mix start (clock),ready (clock),placed (clock)", lines[0]);
    assertEquals("hall,1,1,5.0,0.5,1.5,4.5,5.1,6.0,1,3,3.6,,07:30,07:34,07:35", lines[1]);
  }

  @Test
  void namesAloneWhereNothingIsPoured() {
    assertEquals(NAMES + "\r\n", BatchList.of(List.of(), UnitSystem.METRIC));
  }

  /** 5.678 L are 6 US quarts (231 cubic inches a gallon). */
  @Test
  void inQuarts() {
    String table =
        BatchList.of(
            List.of(batch("hall", 1, 0.005678, OptionalDouble.empty(), Optional.empty())),
            UnitSystem.US);
    assertEquals(NAMES.replace("(L)", "(qt)"), table.split("\r\n", -1)[0]);
    assertEquals("hall,1,1,6.0,", table.split("\r\n", -1)[1].substring(0, 13));
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '~',
      value = {
        "=1+1         ; '=1+1",
        "-2           ; '-2",
        "+a           ; '+a",
        "@SUM(A1)     ; '@SUM(A1)",
        "\uFF1D1      ; '\uFF1D1",
        "~ =1~        ; ' =1",
        "a=1          ; a=1",
        "north-east   ; north-east",
        "hall, west   ; \"hall, west\"",
        "=\"a\"       ; \"'=\"\"a\"\"\""
      },
      delimiter = ';')
  void namesAreNoFormulas(String bay, String cell) {
    List<Batch> batches = List.of(batch(bay, 1, 0.005, OptionalDouble.empty(), Optional.empty()));
    String row = BatchList.of(batches, UnitSystem.METRIC).split("\r\n", -1)[1];
    assertEquals(
        cell, row.substring(0, row.length() - ",1,1,5.0,0.5,1.5,4.5,5.1,6.0,1,3,3.6,".length()));
  }

  /** The coarsest mark within 1 %. */
  @ParameterizedTest
  @CsvSource({
    "METRIC, 5.04, 5.0",
    "METRIC, 5.0501, 5.1",
    "METRIC, 4.74, 4.7",
    "METRIC, 3.25, 3.25",
    "METRIC, 0.123, 0.12",
    "METRIC, 0, 0.0",
    "US, 5.678, 6.0",
    "US, 5.0, 5.25",
    "US, 4.8, 5.0625",
  })
  void water(UnitSystem units, double litres, String mark) {
    assertEquals(mark, JugMark.of(litres / 1000, units).toPlainString());
  }

  private static Batch batch(
      String bay, int number, double water, OptionalDouble edge, Optional<BatchClock> clock) {
    return new Batch(bay, number, 1, water, 0.015, 1, 3, 30, 90, 270, 305, 360, 215, edge, clock);
  }
}
