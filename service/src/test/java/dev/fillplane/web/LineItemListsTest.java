package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The table of lines over HTTP. */
class LineItemListsTest {

  /** Column of the table, place in a line. */
  private static final Map<String, String> TEXTS =
      Map.of(
          "code", "/code",
          "own code", "/ownCode",
          "reference", "/reference",
          "kind", "/kind",
          "role", "/role",
          "description", "/description",
          "unit", "/order/unit",
          "unit price", "/unitPrice",
          "amount", "/amount/amount",
          "basis", "/basis");

  private static final List<String> NUMBERS = List.of("quantity", "waste", "reserve", "order");

  @Test
  void rowsAreTheLines() throws IOException {
    ObjectNode request = RunningService.example("line-items.json");
    List<JsonNode> lines = Estimated.of(request).lines();
    List<CSVRecord> rows = rows(post(request));
    assertEquals(lines.size(), rows.size());
    for (int i = 0; i < rows.size(); i++) {
      same(lines.get(i), rows.get(i));
    }
    assertTrue(rows.size() > 20);
  }

  private static void same(JsonNode line, CSVRecord row) {
    TEXTS.forEach((column, place) -> assertEquals(line.at(place).asText(""), row.get(column)));
    for (String number : NUMBERS) {
      assertEquals(line.has(number), !row.get(number).isEmpty());
      if (line.has(number)) {
        BigDecimal told = line.at("/" + number + "/value").decimalValue();
        assertEquals(0, told.compareTo(new BigDecimal(row.get(number))), number);
      }
    }
    assertEquals(line.has("amount") ? "EUR" : "", row.get("currency"));
  }

  @Test
  void noCellIsAFormula() throws IOException {
    for (String formula : List.of("=1+1", "+1", "-1", "@SUM(A1)", " =1", "\uFF1D1")) {
      ObjectNode request = Estimated.request("rectangle.json", "{}");
      request.withObject("codes").put("primer", formula);
      CSVRecord primer = rows(post(request)).get(1);
      assertEquals("primer", primer.get("code"));
      assertEquals("'" + formula, primer.get("own code"));
    }
    ObjectNode plain = Estimated.request("rectangle.json", "{'codes':{'primer':'a=b, \\'c\\''}}");
    assertEquals("a=b, \"c\"", rows(post(plain)).get(1).get("own code"));
  }

  @Test
  void isCsvInUtf8AndTakesNothingElse() {
    ObjectNode request = Estimated.request("rectangle.json", "{}");
    request.withObject("codes").put("primer", "Gr\u00FCnd");
    Response answer = post(request);
    assertEquals(
        "text/csv;charset=utf-8", answer.contentType().replace(" ", "").toLowerCase(Locale.ROOT));
    assertTrue(answer.asString().contains("\r\nprimer,Gr\u00FCnd,"), answer.asString());
    Response refused =
        RunningService.given()
            .contentType("application/json")
            .accept("application/json")
            .body(request.toString())
            .post("/v1/line-item-lists");
    assertEquals(406, refused.statusCode());
  }

  @Test
  void whatIsWrongIsAProblem() {
    Response answer =
        RunningService.post(
            "/v1/line-item-lists", Estimated.request("rectangle.json", "{'bid':'1'}"));
    assertEquals(422, answer.statusCode());
    assertEquals(List.of("money-without-currency"), answer.path("errors.code"));
  }

  private static List<CSVRecord> rows(Response answer) throws IOException {
    CSVFormat named = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    return CSVParser.parse(answer.asString(), named).getRecords();
  }

  private static Response post(ObjectNode request) {
    Response answer = RunningService.post("/v1/line-item-lists", request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer;
  }
}
