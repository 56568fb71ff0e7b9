package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import dev.fillplane.openapi.Contract;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One operation of the contract that takes a body.
 *
 * @param path where it is posted to
 * @param bodyType media type of the body
 * @param schema name of the schema of the body, or of one line of it
 * @param examples bodies that the contract shows
 * @param answers by status and media type, where in the contract the schema of the answer stands
 */
record Operation(
    String path,
    String bodyType,
    String schema,
    List<JsonNode> examples,
    Map<Integer, Map<String, String>> answers) {

  static final String JSON = "application/json";
  static final String LINES = "application/x-ndjson";
  static final String CSV = "text/csv";

  /** Every operation that is posted to, in the order of the contract. */
  static List<Operation> all(Contract contract) {
    JsonNode document = contract.document();
    List<Operation> all = new ArrayList<>();
    for (var path : document.get("paths").properties()) {
      if (path.getValue().has("post")) {
        all.add(of(path.getKey(), path.getValue().get("post"), document));
      }
    }
    return all;
  }

  private static Operation of(String path, JsonNode post, JsonNode document) {
    var body = post.at("/requestBody/content").properties().iterator().next();
    JsonNode schema = body.getValue().get("schema");
    String reference = schema.path("$ref").asText(schema.at("/x-line/$ref").asText("/PlanRequest"));
    List<JsonNode> examples = new ArrayList<>();
    body.getValue().path("examples").forEach(example -> examples.add(example.get("value")));
    return new Operation(
        path,
        body.getKey(),
        reference.substring(reference.lastIndexOf('/') + 1),
        examples,
        answers("#/paths/" + escaped(path) + "/post/responses/", post, document));
  }

  private static Map<Integer, Map<String, String>> answers(
      String place, JsonNode post, JsonNode document) {
    Map<Integer, Map<String, String>> answers = new TreeMap<>();
    for (var response : post.get("responses").properties()) {
      String shared = response.getValue().path("$ref").asText();
      String from = shared.isEmpty() ? place + response.getKey() : shared;
      Map<String, String> types = new TreeMap<>();
      for (var type : document.at(from.substring(1)).path("content").properties()) {
        String schema = from + "/content/" + escaped(type.getKey()) + "/schema";
        boolean lines = type.getValue().get("schema").has("x-line");
        types.put(type.getKey(), lines ? schema + "/x-line" : schema);
      }
      answers.put(Integer.valueOf(response.getKey()), types);
    }
    return answers;
  }

  private static String escaped(String name) {
    return name.replace("~", "~0").replace("/", "~1");
  }

  boolean takesJson() {
    return bodyType.equals(JSON);
  }

  /** What a table or a line that is meant to be a request is written in. */
  boolean takesLines() {
    return bodyType.equals(LINES);
  }
}
