package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The answers for the sample floors are those that were looked at and kept; {@code -Dgolden=write}
 * keeps new ones. The version of the service is left out of them.
 */
class GoldenTest {

  private static final Path KEPT = Path.of("src", "test", "resources", "dev", "fillplane", "web");
  private static final double TOLERANCE = 1e-9;

  @Test
  void metric() throws IOException {
    compare("metric");
  }

  @Test
  void us() throws IOException {
    compare("us");
  }

  @Test
  void sameRequestTwiceIsTheSameToTheByte() {
    byte[] first = plan(RunningService.sample()).asByteArray();
    byte[] second = plan(RunningService.sample()).asByteArray();
    assertArrayEquals(first, second);
  }

  @Test
  void orderOfPropertiesDoesNotMatter() {
    ObjectNode sample = RunningService.sample();
    JsonNode turned = Trees.backwards(sample);
    assertNotEquals(sample.toString(), turned.toString());
    assertArrayEquals(plan(sample).asByteArray(), plan(turned).asByteArray());
  }

  @Test
  void anotherRequestHasAnotherDigest() {
    ObjectNode other = RunningService.sample().put("reference", "other");
    String path = "computed.inputDigest";
    assertNotEquals(plan(RunningService.sample()).path(path), plan(other).<String>path(path));
  }

  private static void compare(String units) throws IOException {
    JsonNode answer = Trees.of(plan(RunningService.example("sample-" + units + ".json")));
    ((ObjectNode) answer.get("computed")).remove("version");
    Path file = KEPT.resolve("plan-" + units + ".json");
    if ("write".equals(System.getProperty("golden"))) {
      DefaultPrettyPrinter lines = new DefaultPrettyPrinter();
      lines.indentObjectsWith(new DefaultIndenter(" ", "\n"));
      Files.writeString(file, new ObjectMapper().writer(lines).writeValueAsString(answer) + "\n");
    }
    JsonNode kept = Trees.of(Files.readAllBytes(file));
    assertFalse(kept.isEmpty());
    Differences.none(kept, answer, TOLERANCE, 5_000);
  }

  private static Response plan(JsonNode request) {
    Response answer = RunningService.post("/v1/plans", request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer;
  }
}
