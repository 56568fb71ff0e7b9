package dev.fillplane.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.web.Trees;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.w3c.dom.Document;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/** Names that mean something to what they are written into come out as what they are, or not. */
class HostileTextsTest {

  /** As many rooms as there are names would be many; points and probes have all names. */
  private static final int ROOMS = 24;

  private final FuzzedService service = FuzzedService.shared();

  // --- in answers

  @TestFactory
  Stream<DynamicTest> everyAnswerKeepsToItsForm() {
    return Stream.of(
            "/v1/plans",
            "/v1/depth-maps",
            "/v1/timelines",
            "/v1/pour-pages",
            "/v1/pour-sheets",
            "/v1/batch-lists",
            "/v1/plan-shapes",
            "/v1/plan-validations",
            "/v1/elevations")
        .flatMap(
            path ->
                batches()
                    .map(
                        from ->
                            DynamicTest.dynamicTest(path + " " + from, () -> keeps(path, from))));
  }

  /** Numbers of the names that the first room of each request has. */
  private static Stream<Integer> batches() {
    return Stream.of(0, ROOMS);
  }

  private void keeps(String path, int from) {
    ObjectNode request = named(from);
    if (path.equals("/v1/elevations")) {
      request.retain("units", "survey");
    }
    answer(path, request);
  }

  private Reply answer(String path, ObjectNode request) {
    Operation operation = service.operation(path);
    Reply reply = service.post(operation, Texts.of(request));
    assertEquals(Optional.empty(), service.broken(operation, request, reply));
    assertTrue(reply.isGood(), reply.text());
    return reply;
  }

  @Test
  void plansAndShapesTellNamesAsTheyCame() {
    ObjectNode request = named(0);
    JsonNode plan = Trees.of(answer("/v1/plans", request).body());
    Set<String> rooms = texts(request.get("rooms"), "id");
    assertEquals(rooms, texts(plan.at("/quantities/rooms"), "room"));
    assertEquals(texts(request.get("probes"), "id"), texts(plan.at("/depth/probes"), "id"));
    assertEquals(
        texts(request.at("/survey/elevations"), "point"),
        texts(plan.at("/elevations/points"), "point"));
    assertEquals(request.get("reference"), plan.get("reference"));
    JsonNode shapes = Trees.of(answer("/v1/plan-shapes", request).body());
    for (JsonNode shape : shapes.get("features")) {
      String room = shape.at("/properties/room").asText("");
      assertTrue(room.isEmpty() || rooms.contains(room), room);
    }
  }

  @Test
  void picturesAndPagesRunNothing() throws SAXException {
    for (String path : List.of("/v1/depth-maps", "/v1/timelines", "/v1/pour-pages")) {
      for (int from : List.of(0, ROOMS)) {
        Document document = Papers.xml(answer(path, named(from)).text());
        quiet(document.getDocumentElement(), path);
      }
    }
  }

  /** Neither events nor links; a link to a part of the same document is none. */
  private static void quiet(Node node, String path) {
    NamedNodeMap attributes = node.getAttributes();
    for (int i = 0; attributes != null && i < attributes.getLength(); i++) {
      String name = attributes.item(i).getNodeName();
      String value = attributes.item(i).getNodeValue();
      assertFalse(name.startsWith("on"), path + " " + name);
      boolean link = name.endsWith("href") || name.equals("src") || name.equals("action");
      assertFalse(
          link && !value.startsWith("#") && !value.startsWith("data:image"), path + " " + value);
    }
    for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
      quiet(child, path);
    }
  }

  @Test
  void batchesNameTheirBaysBehindAnApostropheWhereTheyOpenAFormula() throws IOException {
    for (int from : List.of(0, ROOMS)) {
      ObjectNode request = named(from);
      String table = answer("/v1/batch-lists", request).text();
      Set<String> rooms = texts(request.get("rooms"), "id");
      List<CSVRecord> rows = CSVFormat.RFC4180.parse(new StringReader(table)).getRecords();
      assertTrue(rows.size() > ROOMS / 2);
      for (CSVRecord row : rows.subList(1, rows.size())) {
        String bay = row.get(0);
        boolean told = rooms.stream().map(HostileTextsTest::seen).anyMatch(bay::equals);
        assertTrue(told, shown(bay));
      }
    }
  }

  /** As a cell tells it: marks that turn the direction are gone, what opens a formula is behind. */
  private static String seen(String name) {
    String plain =
        name.replaceAll("[\u200E\u200F\u202A-\u202E\u2066-\u2069\u061C\uFFFE\uFFFF]", "");
    return Papers.isFormula(plain) ? "'" + plain : plain;
  }

  @Test
  void textOfASheetCanBeTakenOutOfIt() throws IOException {
    ObjectNode request = named(0).put("reference", "<b>unit & 3</b> \uD83D\uDE00 ]]>");
    try (PDDocument sheet = Loader.loadPDF(answer("/v1/pour-sheets", request).body())) {
      String text = new PDFTextStripper().getText(sheet);
      assertTrue(text.contains("<b>unit & 3</b>"), text.substring(0, 300));
      assertFalse(text.contains("unit &amp;"), "escaped twice");
    }
  }

  // --- in refusals

  @TestFactory
  Stream<DynamicTest> namesThatAreNoneAreRefusedInTheirPlace() {
    return Stream.of("/reference", "/rooms/0/id", "/survey/elevations/0/point", "/probes/0/id")
        .flatMap(
            place ->
                HostileTexts.REFUSED.stream()
                    .map(
                        text ->
                            DynamicTest.dynamicTest(
                                place + " " + shown(text), () -> refused(place, text))));
  }

  private static String shown(String text) {
    String escaped = Texts.of(Trees.of("{}").put("t", text));
    return escaped.substring(0, Math.min(40, escaped.length()));
  }

  private void refused(String place, String text) {
    ObjectNode request = named(0);
    int last = place.lastIndexOf('/');
    ((ObjectNode) request.at(place.substring(0, last))).put(place.substring(last + 1), text);
    Operation plans = service.operation("/v1/plans");
    Reply reply = service.post(plans, Texts.of(request));
    assertEquals(Optional.empty(), service.broken(plans, request, reply));
    assertEquals(422, reply.status());
    JsonNode error = Trees.of(reply.body()).at("/errors/0");
    assertEquals("bad-text", error.get("code").textValue());
    assertEquals("#" + place, error.get("pointer").textValue());
  }

  /** Half a character is none; whatever is said about it must be text again. */
  @TestFactory
  Stream<DynamicTest> halfCharactersNeverFail() {
    return service.operations().stream()
        .filter(operation -> operation.schema().equals("PlanRequest"))
        .map(operation -> DynamicTest.dynamicTest(operation.path(), () -> half(operation)));
  }

  private void half(Operation operation) {
    for (String text : HostileTexts.LONE) {
      for (String place :
          List.of("/rooms/0/id", "/survey/elevations/0/point", "/probes/0/id", "")) {
        ObjectNode request = few();
        String name = place.isEmpty() ? "reference" : place.substring(place.lastIndexOf('/') + 1);
        JsonNode of =
            place.isEmpty() ? request : request.at(place.substring(0, place.lastIndexOf('/')));
        ((ObjectNode) of).put(name, text);
        Reply reply = service.post(operation, Texts.of(request));
        if (operation.takesJson()) {
          assertEquals(Optional.empty(), service.broken(operation, request, reply));
        }
        assertTrue(reply.status() < 500, operation.path() + place + reply.text());
      }
    }
  }

  @Test
  void namesOfUnknownPropertiesAreToldAsTheyAre() {
    ObjectNode request = few();
    for (String name : HostileTexts.ALLOWED) {
      if (name.length() <= 100) {
        request.put(name, 1);
      }
    }
    Operation plans = service.operation("/v1/plans");
    Reply reply = service.post(plans, Texts.of(request));
    assertEquals(422, reply.status());
    assertEquals(Optional.empty(), service.broken(plans, request, reply));
  }

  // --- requests

  private static Set<String> texts(JsonNode list, String name) {
    Set<String> texts = new TreeSet<>();
    list.forEach(element -> texts.add(element.get(name).textValue()));
    return texts;
  }

  private static ObjectNode few() {
    ObjectNode request = named(0);
    ArrayNode rooms = request.withArray("rooms");
    while (rooms.size() > 1) {
      rooms.remove(1);
    }
    return request;
  }

  /** Small rooms side by side, a reading and a probe for each name. */
  private static ObjectNode named(int from) {
    List<String> names = HostileTexts.ALLOWED;
    ObjectNode request = Trees.of("{'units':'metric','rooms':[],'survey':{'elevations':[]}}");
    request.put("reference", names.get(from)).putArray("probes");
    for (int i = from; i < Math.min(names.size(), from + ROOMS); i++) {
      double x = 1.1 * (i - from);
      OddFloor.add(request, names.get(i), Rings.polygon(Rings.box(x, 0, x + 1, 2)));
      ObjectNode opening =
          ((ObjectNode) request.at("/rooms/" + (i - from))).putArray("openings").addObject();
      opening.put("id", names.get(i)).put("kind", i % 2 == 0 ? "exit" : "threshold");
      opening.putArray("from").add(x + 0.1).add(0);
      opening.putArray("to").add(x + 0.9).add(0);
    }
    for (int i = 0; i < names.size(); i++) {
      double x = 1.1 * ROOMS * i / names.size();
      double y = i % 3 * 0.9;
      OddFloor.reading(request, x, y, -5 - i % 4);
      ((ObjectNode) request.at("/survey/elevations/" + i)).put("point", names.get(i));
      request.withArray("probes").addObject().put("id", names.get(i)).put("x", x).put("y", 1);
    }
    return request;
  }
}
