package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.io.IOException;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** Pour pages, pour sheets, timelines and shapes over HTTP. */
class SheetsTest {

  @Test
  void pageIsHtmlWithTheSentencesOfThePlan() {
    Response answer = post("/v1/pour-pages", "", RunningService.sample());
    assertEquals(
        "text/html;charset=utf-8", answer.contentType().replace(" ", "").toLowerCase(Locale.ROOT));
    String page = answer.asString();
    JsonNode plan = Trees.of(post("/v1/plans", "", RunningService.sample()));
    for (String part : new String[] {"/safety", "/pour/reasons", "/pour/changes"}) {
      for (JsonNode told : plan.at(part)) {
        String text = told.get("text").textValue().replace("'", "&#39;");
        assertTrue(page.contains(text), text);
      }
    }
    for (JsonNode warning : plan.at("/warnings")) {
      assertTrue(page.contains(warning.get("detail").textValue()));
    }
    assertTrue(page.contains(plan.at("/computed/inputDigest").textValue()));
  }

  @Test
  void sheetIsPdfOfTheSameWords() throws IOException {
    Response answer = post("/v1/pour-sheets", "?page=letter", RunningService.sample());
    assertEquals("application/pdf", answer.contentType());
    JsonNode plan = Trees.of(post("/v1/plans", "", RunningService.sample()));
    try (PDDocument document = Loader.loadPDF(answer.asByteArray())) {
      assertEquals(612, document.getPage(0).getMediaBox().getWidth(), 0.1);
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", "");
      for (JsonNode note : plan.at("/safety")) {
        String told = note.get("text").textValue().replaceAll("\\s+", "");
        assertTrue(text.contains(told), told);
      }
    }
  }

  @Test
  void sheetIsTheSameToTheByte() {
    byte[] first = post("/v1/pour-sheets", "", RunningService.sample()).asByteArray();
    byte[] second = post("/v1/pour-sheets", "", RunningService.sample()).asByteArray();
    assertArrayEquals(first, second);
  }

  @Test
  void paperByTheUnits() {
    assertTrue(page("", RunningService.sample()).contains("size: A4;"));
    ObjectNode us = (ObjectNode) RunningService.example("sample-us.json");
    assertTrue(page("", us).contains("size: letter;"));
    assertTrue(page("?page=a4", us).contains("size: A4;"));
  }

  @Test
  void otherPaperIsRefused() {
    for (String path : new String[] {"/v1/pour-pages", "/v1/pour-sheets"}) {
      Response answer = RunningService.post(path + "?page=a3", RunningService.sample());
      assertEquals(400, answer.statusCode());
      assertEquals("The parameter page must be a4 or letter.", answer.path("detail"));
    }
  }

  @Test
  void timelineIsAPicture() {
    Response answer = post("/v1/timelines", "", RunningService.sample());
    assertEquals("image/svg+xml", answer.contentType());
    assertTrue(
        answer.asString().startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\""));
  }

  /** Lengths on plan in feet, heights in inches, as unitCodes say. */
  @Test
  void shapesAreInTheUnitsOfTheCaller() {
    JsonNode metric = Trees.of(post("/v1/plan-shapes", "", RunningService.sample()));
    ObjectNode request = (ObjectNode) RunningService.example("sample-us.json");
    JsonNode us = Trees.of(post("/v1/plan-shapes", "", request));
    assertEquals("[ft_i]", us.at("/unitCodes/plan").textValue());
    assertEquals("FeatureCollection", us.get("type").textValue());
    JsonNode foot = first(us, "room");
    JsonNode metre = first(metric, "room");
    double feet = foot.at("/geometry/coordinates/0/1/0").doubleValue();
    assertEquals(metre.at("/geometry/coordinates/0/1/0").doubleValue() / 0.3048, feet, 1e-3);
    double inches = first(us, "dam").at("/properties/height").doubleValue();
    double millimetres = first(metric, "dam").at("/properties/height").doubleValue();
    assertEquals(millimetres / 25.4, inches, 0.05);
  }

  @Test
  void shapesAreGeoJson() {
    Response answer = post("/v1/plan-shapes", "", RunningService.sample());
    assertEquals("application/geo+json", answer.contentType());
    JsonNode shapes = Trees.of(answer);
    assertFalse(shapes.get("features").isEmpty());
    for (JsonNode shape : shapes.get("features")) {
      assertEquals("Feature", shape.get("type").textValue());
      assertTrue(shape.at("/geometry/coordinates").isArray());
      JsonNode number = shape.at("/geometry/coordinates");
      while (number.isArray()) {
        number = number.get(0);
      }
      assertTrue(number.isNumber(), shape.toString());
    }
  }

  private static JsonNode first(JsonNode shapes, String kind) {
    for (JsonNode shape : shapes.get("features")) {
      if (shape.at("/properties/kind").textValue().equals(kind)) {
        return shape;
      }
    }
    throw new AssertionError("no " + kind);
  }

  private static String page(String query, ObjectNode request) {
    return post("/v1/pour-pages", query, request).asString();
  }

  private static Response post(String path, String query, ObjectNode request) {
    Response answer = RunningService.post(path + query, request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer;
  }
}
