package dev.fillplane.web.json;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import dev.fillplane.depth.Grid;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Room;
import dev.fillplane.surface.Variogram;
import dev.fillplane.surface.VariogramShape;
import dev.fillplane.survey.Reading;
import dev.fillplane.survey.Table;
import dev.fillplane.target.Prices;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class JsonTest {

  @Test
  void readsAQuantityInTheCallersUnits() throws IOException {
    String text = "{'point':'7','x':10,'y':2,'reading':48}";
    Reading metric = read(text, Reading.class, UnitSystem.METRIC);
    assertEquals(new Reading("7", OptionalDouble.of(10), OptionalDouble.of(2), 0.048), metric);
    Reading us = read(text, Reading.class, UnitSystem.US);
    assertEquals(3.048, us.x().orElseThrow(), 1e-12);
    assertEquals(48 * 0.0254, us.reading(), 1e-12);
  }

  @Test
  void leavesOutWhatIsNotThere() throws IOException {
    Reading reading = read("{'point':'7','reading':48}", Reading.class, UnitSystem.METRIC);
    assertEquals(OptionalDouble.empty(), reading.x());
    assertEquals("{\"point\":\"7\",\"reading\":48}", text(reading, UnitSystem.METRIC));
  }

  @Test
  void writesWhatItReads() throws IOException {
    Variogram told = new Variogram(VariogramShape.MATERN_3_2, 1e-6, 4e-6, 3.048);
    assertEquals(
        "{\"shape\":\"matern-3-2\",\"nugget\":1,\"sill\":4,\"range\":3.048}",
        text(told, UnitSystem.METRIC));
    JsonNode us = Json.tree(Json.bytes(told, UnitSystem.US));
    assertEquals(10, us.get("range").doubleValue(), 1e-11);
    Variogram back = Json.read(us, Variogram.class, UnitSystem.US);
    assertEquals(told.sill(), back.sill(), 1e-17);
  }

  @Test
  void readsARoomWithItsOutline() throws IOException {
    Room room =
        read(
            "{'id':'a','outline':{'type':'Polygon','coordinates':[[[0,0],[10,0],[10,10],[0,0]]]},"
                + "'openings':[{'id':'d','from':[1,0],'to':[2,0],'kind':'exit'}]}",
            Room.class,
            UnitSystem.US);
    assertEquals(50 * 0.3048 * 0.3048, room.outline().polygon().getArea(), 1e-9);
    assertEquals(0.3048, room.openings().get(0).width(), 1e-12);
    assertEquals(
        "{\"type\":\"Polygon\",\"coordinates\":[[[0,0],[10,0],[10,10],[0,0]]]}",
        text(room.outline(), UnitSystem.US));
  }

  @Test
  void readsATableByItsColumns() throws IOException {
    Table table =
        read(
            "{'columns':['reading','x','y'],'values':[1200,1,2,1210,3,4]}",
            Table.class,
            UnitSystem.METRIC);
    assertArrayEquals(new double[] {1.2, 1, 2, 1.21, 3, 4}, table.values(), 1e-12);
  }

  @Test
  void writesDepthsToAHundredthOfAMillimetre() {
    Grid grid = new Grid(0, 0, 0.1, 2, 1, new double[] {0.0123456, Grid.OUTSIDE});
    assertEquals(
        "{\"originX\":0,\"originY\":0,\"cell\":0.1,\"columns\":2,\"rows\":1,\"outside\":-1,"
            + "\"depths\":[12.35,-1]}",
        text(grid, UnitSystem.METRIC));
  }

  @Test
  void writesPricesAsTheyWereTold() throws IOException {
    String told = "{'currency':'USD','fill':'53.85','grind':'0.000123'}";
    for (UnitSystem system : UnitSystem.values()) {
      String back = text(read(told, Prices.class, system), system);
      assertEquals(tree(told), Json.tree(back.getBytes(StandardCharsets.UTF_8)));
    }
    assertEquals(53_850, read(told, Prices.class, UnitSystem.METRIC).fill(), 1e-9);
    double cubicFoot = 0.3048 * 0.3048 * 0.3048;
    assertEquals(53.85 / cubicFoot, read(told, Prices.class, UnitSystem.US).fill(), 1e-9);
  }

  @Test
  void writesAnAmountWithItsUnit() {
    Amount amount = Amount.of(30, Dimension.TEMPERATURE);
    assertEquals("{\"value\":86,\"unit\":\"[degF]\"}", text(amount, UnitSystem.US));
  }

  @Test
  void writesAFindingInTheCallersWords() {
    Findings findings = new Findings();
    findings.error("missing", Place.root().at("a/b").at(2), "property", "rooms");
    assertEquals(
        "{\"code\":\"missing\",\"detail\":\"The property rooms is missing.\","
            + "\"pointer\":\"#/a~1b/2\"}",
        text(findings.errors().get(0), UnitSystem.METRIC));
  }

  @Test
  void neverWritesWhatIsNoNumber() {
    Variogram broken = new Variogram(VariogramShape.GAUSSIAN, Double.NaN, 1, 1);
    assertThrows(RuntimeException.class, () -> Json.bytes(broken, UnitSystem.METRIC));
  }

  @Test
  void refusesWhatIsNoJson() {
    for (String text :
        new String[] {
          "{",
          "{'a':1} x",
          "{'a':1,'a':2}",
          "{'a':NaN}",
          "[".repeat(41) + "]".repeat(41),
          "{'" + "a".repeat(Json.NAME_LIMIT + 1) + "':1}"
        }) {
      assertThrows(JsonProcessingException.class, () -> tree(text), text);
    }
  }

  @Test
  void takesNoTextForANumber() throws IOException {
    JsonNode tree = tree("{'point':'7','reading':'48'}");
    assertThrows(
        JsonMappingException.class, () -> Json.read(tree, Reading.class, UnitSystem.METRIC));
  }

  @Test
  void canonicalFormDoesNotKnowTheOrderOfProperties() throws IOException {
    assertArrayEquals(
        Json.canonical(tree("{'a':{'c':1,'d':2},'b':3}")),
        Json.canonical(tree("{'b':3,'a':{'d':2,'c':1}}")));
  }

  private static <T> T read(String text, Class<T> type, UnitSystem units) throws IOException {
    return Json.read(tree(text), type, units);
  }

  private static JsonNode tree(String text) throws IOException {
    return Json.tree(text.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
  }

  private static String text(Object value, UnitSystem units) {
    return new String(Json.bytes(value, units), StandardCharsets.UTF_8);
  }
}
