package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.fillplane.web.json.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/** What the contract says of keys is what holds. */
class OperationsTest {

  @Test
  void contractNamesTheScopes() {
    Map<String, Object> told = new TreeMap<>();
    Map<String, Object> hold = new TreeMap<>();
    operations()
        .forEach(
            (name, operation) -> {
              if (!asksForAKey(name)) {
                return;
              }
              told.put(name, texts(operation.path("x-scopes")));
              List<String> scopes =
                  Operations.scopes(name.split(" ")[1]).stream().map(Words::of).sorted().toList();
              hold.put(name, scopes.equals(List.of("calculate")) ? List.of() : scopes);
            });
    assertEquals(hold, told);
  }

  @Test
  void everyOperationThatAsksForAKeyTellsSo() {
    operations()
        .forEach(
            (name, operation) -> {
              JsonNode responses = operation.get("responses");
              assertEquals(asksForAKey(name), responses.has("401"), name);
              assertEquals(asksForAKey(name), responses.has("403"), name);
              assertEquals(!asksForAKey(name), operation.has("security"), name);
            });
  }

  /** A light operation that is none would be one that no page can use. */
  @Test
  void lightOperationsAreOfTheContract() {
    Map<String, JsonNode> operations = operations();
    Operations.light().forEach(path -> assertTrue(operations.containsKey("post " + path), path));
    Operations.catalogues()
        .forEach(path -> assertTrue(operations.containsKey("get " + path), path));
  }

  private static boolean asksForAKey(String name) {
    return name.contains(" /v1/");
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    StreamSupport.stream(list.spliterator(), false).forEach(text -> texts.add(text.textValue()));
    return texts.stream().sorted().toList();
  }

  private static Map<String, JsonNode> operations() {
    Map<String, JsonNode> operations = new TreeMap<>();
    for (var path : RunningService.CONTRACT.document().get("paths").properties()) {
      for (var method : path.getValue().properties()) {
        operations.put(method.getKey() + " " + path.getKey(), method.getValue());
      }
    }
    return operations;
  }
}
