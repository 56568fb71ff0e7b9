package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/**
 * The page that puts a hot and a cool day side by side is what the service answers; {@code
 * -Dgolden=write} writes it anew.
 */
class HotAndCoolDocTest {

  private static final Path PAGE = Path.of("..", "docs", "hot-and-cool.md");

  private static final String HEAD =
      """
      # A hot and a cool day on the same floor

      The invented sample floor (`openapi/examples/sample-metric.json`) poured by the same four people with two mixers and four barrels, once on a
      cool morning with cool water, once on a hot day with bags in the sun and water as warm as the tap gives it. `HotAndCoolDocTest` makes this page
      from two answers of `POST /v1/plans`. An estimate: the data sheet decides, and above its range nobody knows how much shorter times are.

      | | cool | hot |
      |---|---|---|
      """;

  @Test
  void pageIsWhatIsAnswered() throws IOException {
    JsonNode cool = plan(14, 10);
    JsonNode hot = plan(35, 32);
    assertEquals("holds", cool.at("/pour/verdict").textValue());
    assertEquals("breaks", hot.at("/pour/verdict").textValue());
    String page = page(cool, hot);
    if ("write".equals(System.getProperty("golden"))) {
      Files.writeString(PAGE, page);
    }
    assertEquals(Files.readString(PAGE), page);
  }

  private static String page(JsonNode cool, JsonNode hot) {
    StringBuilder page = new StringBuilder(HEAD);
    page.append("| air, floor and bags | 14 C | 35 C |\n").append("| mix water | 10 C | 32 C |\n");
    rows()
        .forEach(
            row ->
                page.append("| ")
                    .append(row.name())
                    .append(" | ")
                    .append(row.told().apply(cool))
                    .append(" | ")
                    .append(row.told().apply(hot))
                    .append(" |\n"));
    return page.toString();
  }

  private record Row(String name, Function<JsonNode, String> told) {}

  private static List<Row> rows() {
    return List.of(
        new Row("mix temperature", plan -> number(plan, "/mix/mixTemperature", "C")),
        new Row("working time on this floor", plan -> number(plan, "/mix/workingTime", "min")),
        new Row("healing time, within which an edge closes", HotAndCoolDocTest::healing),
        new Row("**verdict**", plan -> "**" + plan.at("/pour/verdict").textValue() + "**"),
        new Row("oldest edge when it is met", plan -> text(oldestEdge(plan)) + " min"),
        new Row("where", HotAndCoolDocTest::where),
        new Row("people needed with two mixers", HotAndCoolDocTest::needed),
        new Row(
            "changes that make it hold, else the one that helps most", HotAndCoolDocTest::changes),
        new Row("batches, bags", HotAndCoolDocTest::totals),
        new Row("minutes to the last batch", plan -> number(plan, "/pour/minutes", "min")),
        new Row("how long mixing may stand still", HotAndCoolDocTest::standstill),
        new Row("reasons", plan -> sentences(plan.at("/pour/reasons"))));
  }

  private static String healing(JsonNode plan) {
    return number(plan, "/mix/healingTime", "min");
  }

  private static String standstill(JsonNode plan) {
    return number(plan, "/troubles/standstill", "min");
  }

  private static String totals(JsonNode plan) {
    return plan.at("/pour/totals/batches").asText() + ", " + plan.at("/pour/totals/bags").asText();
  }

  private static double oldestEdge(JsonNode plan) {
    return stream(plan.at("/pour/batches"))
        .mapToDouble(batch -> batch.path("edgeAge").doubleValue())
        .max()
        .orElse(0);
  }

  private static String where(JsonNode plan) {
    double oldest = oldestEdge(plan);
    return stream(plan.at("/pour/batches"))
        .filter(batch -> batch.path("edgeAge").doubleValue() == oldest)
        .findFirst()
        .map(b -> b.get("bay").textValue() + ", met by batch " + b.get("number"))
        .orElse("nowhere");
  }

  private static String needed(JsonNode plan) {
    JsonNode needed = plan.at("/pour/crew/needed");
    return needed.isMissingNode() ? "no number up to twelve is known to do" : needed.asText();
  }

  private static String changes(JsonNode plan) {
    String changes =
        stream(plan.at("/pour/changes"))
            .map(c -> c.get("text").textValue() + " Then it " + verdict(c) + ".")
            .collect(Collectors.joining("<br>"));
    return changes.isEmpty() ? "none needed" : changes;
  }

  private static String verdict(JsonNode change) {
    String verdict = change.get("verdict").textValue();
    return verdict.equals("tight") ? "is tight" : verdict;
  }

  private static String sentences(JsonNode remarks) {
    List<String> all = new ArrayList<>();
    remarks.forEach(remark -> all.add(remark.get("text").textValue()));
    return String.join("<br>", all);
  }

  private static String number(JsonNode plan, String place, String unit) {
    return text(plan.at(place).doubleValue()) + " " + unit;
  }

  private static String text(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private static Stream<JsonNode> stream(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false);
  }

  private static JsonNode plan(double air, double water) {
    ObjectNode request = RunningService.sample();
    request
        .withObject("conditions")
        .put("air", air)
        .put("floor", air)
        .put("powder", air)
        .put("water", water);
    request.withObject("crew").put("people", 4).put("mixers", 2).put("barrels", 4);
    Response answer = RunningService.post("/v1/plans", request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return Trees.of(answer);
  }
}
