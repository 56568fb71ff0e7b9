package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The table of batches over HTTP. */
class BatchListsTest {

  /** Column of the table, property of a batch. */
  private static final Map<String, String> SAME =
      Map.of(
          "mix start (min)", "mixStart",
          "first water (min)", "firstWater",
          "ready (min)", "ready",
          "placed (min)", "placed",
          "rolled (min)", "rolled",
          "age when placed (min)", "age",
          "age of the edge met (min)", "edgeAge");

  @Test
  void rowsAreTheBatchesOfThePlan() throws IOException {
    ObjectNode request = RunningService.sample();
    request.withObject("crew").put("start", "07:30");
    JsonNode batches = Trees.of(post("/v1/plans", request)).at("/pour/batches");
    List<CSVRecord> rows = rows(post("/v1/batch-lists", request));
    assertEquals(batches.size(), rows.size());
    for (int i = 0; i < rows.size(); i++) {
      same(batches.get(i), rows.get(i));
    }
    assertTrue(rows.size() > 20);
  }

  private static void same(JsonNode batch, CSVRecord row) {
    assertEquals(batch.get("bay").textValue(), row.get("bay"));
    assertEquals(batch.get("number").asText(), row.get("batch"));
    assertEquals(batch.get("bags").asText(), row.get("bags"));
    assertEquals(batch.get("firstRibbon").asText(), row.get("first ribbon"));
    assertEquals(batch.get("lastRibbon").asText(), row.get("last ribbon"));
    assertEquals(batch.at("/clock/placed").textValue(), row.get("placed (clock)"));
    double water = batch.get("water").doubleValue();
    assertEquals(water, Double.parseDouble(row.get("water (L)")), 0.01 * water);
    SAME.forEach(
        (column, property) -> {
          assertEquals(batch.has(property), !row.get(column).isEmpty(), column);
          if (batch.has(property)) {
            double told = Double.parseDouble(row.get(column));
            assertEquals(batch.get(property).doubleValue(), told, 0.05 + 1e-9, column);
          }
        });
  }

  @Test
  void isCsvInUtf8() {
    ObjectNode request = RunningService.sample();
    ((ObjectNode) request.at("/rooms/1")).put("id", "=K\u00FCche");
    Response answer = post("/v1/batch-lists", request);
    assertEquals(
        "text/csv;charset=utf-8", answer.contentType().replace(" ", "").toLowerCase(Locale.ROOT));
    assertTrue(answer.asString().contains("\r\n'=K\u00FCche,1,1,5.0,"), answer.asString());
  }

  @Test
  void takesCsvOnly() {
    Response answer =
        RunningService.given()
            .contentType("application/json")
            .accept("application/json")
            .body(RunningService.sample().toString())
            .post("/v1/batch-lists");
    assertEquals(406, answer.statusCode());
    assertEquals("This operation answers with text/csv only.", answer.path("detail"));
  }

  private static List<CSVRecord> rows(Response answer) throws IOException {
    CSVFormat named = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    return CSVParser.parse(answer.asString(), named).getRecords();
  }

  private static Response post(String path, ObjectNode request) {
    Response answer = RunningService.post(path, request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer;
  }
}
