package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the page converts when the units change is what the contract gives a dimension. */
class PageDimensionsTest {

  private static final Pattern WORDS =
      Pattern.compile("^  (\\w+): \\[|'(/[^']+)'", Pattern.MULTILINE);

  @Test
  void thePageKnowsTheDimensionOfEveryNumberOfARequest() throws IOException {
    JsonNode schemas =
        new YAMLMapper().readTree(RunningService.CONTRACT.yaml()).at("/components/schemas");
    Map<String, String> contract = new TreeMap<>();
    collect(schemas, schemas.get("PlanRequest"), "", contract);
    // Those of a minute or a mole are the same in both systems.
    contract
        .values()
        .removeIf(dimension -> dimension.equals("time") || dimension.equals("molarEnergy"));
    assertEquals(contract, page());
  }

  private static void collect(
      JsonNode schemas, JsonNode schema, String path, Map<String, String> found) {
    if (schema.has("$ref")) {
      String ref = schema.get("$ref").textValue();
      collect(schemas, schemas.get(ref.substring(ref.lastIndexOf('/') + 1)), path, found);
      return;
    }
    if (schema.has("x-dimension")) {
      found.put(path, schema.get("x-dimension").textValue());
    }
    for (Map.Entry<String, JsonNode> property : schema.path("properties").properties()) {
      collect(schemas, property.getValue(), path + "/" + property.getKey(), found);
    }
    if (schema.has("items")) {
      collect(schemas, schema.get("items"), path + "/*", found);
    }
  }

  private static Map<String, String> page() throws IOException {
    Map<String, String> found = new TreeMap<>();
    try (var in = PageDimensionsTest.class.getResourceAsStream("page/dimensions.js")) {
      Matcher words = WORDS.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      String dimension = "";
      while (words.find()) {
        if (words.group(1) != null) {
          dimension = words.group(1);
        } else {
          found.put(words.group(2), dimension);
        }
      }
    }
    return found;
  }
}
