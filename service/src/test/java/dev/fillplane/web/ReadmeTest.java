package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The request of the README is answered as the README says. */
class ReadmeTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  @Test
  void requestIsAnsweredAsShown() throws IOException {
    String readme = Files.readString(Path.of("../README.md"));
    String request = find(readme, "-d '(\\{.*?\\n\\})'");
    JsonNode shown = JSON.readTree(find(readme, "```json\\n(.*?)```"));
    Response answer = RunningService.post("/v1/plans", request);
    assertEquals(200, answer.statusCode(), answer.asString());
    compare("#", shown, JSON.readTree(answer.asByteArray()));
  }

  /** Everything shown is there; numbers to the three digits or more that are shown. */
  private static void compare(String place, JsonNode shown, JsonNode real) {
    if (shown.isObject()) {
      shown
          .properties()
          .forEach(
              entry ->
                  compare(
                      place + "/" + entry.getKey(), entry.getValue(), real.path(entry.getKey())));
    } else if (shown.isArray()) {
      assertEquals(shown.size(), real.size(), place);
      for (int i = 0; i < shown.size(); i++) {
        compare(place + "/" + i, shown.get(i), real.get(i));
      }
    } else if (shown.isNumber()) {
      double tolerance = 1e-3 * Math.abs(shown.doubleValue());
      assertEquals(shown.doubleValue(), real.doubleValue(), tolerance, place);
    } else {
      assertEquals(shown, real, place);
    }
  }

  private static String find(String text, String pattern) {
    Matcher matcher = Pattern.compile(pattern, Pattern.DOTALL).matcher(text);
    assertTrue(matcher.find(), pattern);
    return matcher.group(1);
  }
}
