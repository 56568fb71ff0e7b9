package dev.fillplane.openapi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Small contracts of two or three files. */
class BundlerTest {
  @TempDir Path folder;

  @BeforeEach
  void root() throws IOException {
    file("openapi.yaml", "{openapi: 3.0.3, paths: {/p: {$ref: 'paths/p.yaml#/p'}}}");
    file("paths/p.yaml", "{p: {get: {summary: Asks}}}");
  }

  @Test
  void putsPathItemsInPlace() throws IOException {
    assertBundled("/paths/~1p/get/summary", "Asks");
  }

  @Test
  void turnsReferencesToSchemas() throws IOException {
    file("paths/p.yaml", "{p: {get: {schema: {$ref: '../schemas/a.yaml#/A'}}}}");
    file("schemas/a.yaml", "{A: {items: {$ref: '#/A2'}, not: {$ref: 'b.yaml#/B'}}, A2: {}}");
    file("schemas/b.yaml", "{B: {type: string}}");
    assertBundled("/paths/~1p/get/schema/$ref", "#/components/schemas/A");
    assertBundled("/components/schemas/A/items/$ref", "#/components/schemas/A2");
    assertBundled("/components/schemas/A/not/$ref", "#/components/schemas/B");
    assertBundled("/components/schemas/B/type", "string");
  }

  @Test
  void turnsDiscriminatorMappings() throws IOException {
    file("schemas/a.yaml", "{A: {discriminator: {propertyName: k, mapping: {b: '#/B'}}}, B: {}}");
    assertBundled("/components/schemas/A/discriminator/mapping/b", "#/components/schemas/B");
    assertBundled("/components/schemas/A/discriminator/propertyName", "k");
  }

  @Test
  void collectsResponsesAndParameters() throws IOException {
    file("paths/p.yaml", "{p: {get: {r: {$ref: '../responses.yaml#/Bad'}}}}");
    file("responses.yaml", "{Bad: {schema: {$ref: 'schemas/a.yaml#/A'}}}");
    file("parameters.yaml", "{Page: {name: page}}");
    file("schemas/a.yaml", "{A: {}}");
    assertBundled("/paths/~1p/get/r/$ref", "#/components/responses/Bad");
    assertBundled("/components/responses/Bad/schema/$ref", "#/components/schemas/A");
    assertBundled("/components/parameters/Page/name", "page");
  }

  @Test
  void keepsComponentsOfTheRoot() throws IOException {
    file(
        "openapi.yaml",
        "{a: {$ref: '#/components/schemas/A'}, components: {schemas: {A: {type: string}}}}");
    file("schemas/b.yaml", "{B: {type: number}}");
    assertBundled("/a/$ref", "#/components/schemas/A");
    assertBundled("/components/schemas/A/type", "string");
    assertBundled("/components/schemas/B/type", "number");
  }

  @Test
  void putsExamplesInPlace() throws IOException {
    file(
        "paths/p.yaml",
        "{p: {examples: {one: {summary: One, $ref: ../examples/e.json}},"
            + " other: {value: {$ref: ../examples/e.json}},"
            + " example: {$ref: ../examples/list.json}}}");
    file("examples/e.json", "{\"size\": \"small\"}");
    file("examples/list.json", "[\"first\"]");
    assertBundled("/paths/~1p/examples/one/summary", "One");
    assertBundled("/paths/~1p/examples/one/value/size", "small");
    assertBundled("/paths/~1p/other/value/size", "small");
    assertBundled("/paths/~1p/example/0", "first");
    assertEquals("small", Contract.read(folder).example("e.json").get("size").textValue());
  }

  @Test
  void refusesTwoSchemasOfOneName() throws IOException {
    file("schemas/a.yaml", "{Same: {}}");
    file("schemas/b.yaml", "{Same: {}}");
    assertRefused("schemas/b.yaml", "Same");
  }

  @Test
  void refusesTwoSchemasOfOneNameInOneFile() throws IOException {
    file("schemas/a.yaml", "Same: {}\nSame: {}\n");
    IOException refusal = assertThrows(IOException.class, () -> Contract.read(folder));
    assertTrue(refusal.getMessage().contains("schemas/a.yaml"), refusal.getMessage());
  }

  @Test
  void refusesReferencesToNothing() throws IOException {
    file("schemas/a.yaml", "{A: {$ref: '#/Gone'}}");
    assertRefused("schemas/a.yaml", "#/Gone");
    file("schemas/a.yaml", "{A: {$ref: 'gone.yaml#/A'}}");
    assertRefused("schemas/a.yaml", "gone.yaml");
    file("schemas/a.yaml", "{A: {$ref: '../openapi.yaml#/components/schemas/Gone'}}");
    assertRefused("schemas/a.yaml", "#/components/schemas/Gone");
  }

  @Test
  void refusesASchemaSoughtInTheWrongFile() throws IOException {
    file("schemas/a.yaml", "{A: {$ref: '#/B'}}");
    file("schemas/b.yaml", "{B: {}}");
    assertRefused("schemas/a.yaml", "#/B");
  }

  @Test
  void quotesTextThatLooksLikeADate() throws IOException {
    file("openapi.yaml", "{on: '2026-01-01', at: '12:30', word: plain, code: {'200': 'no'}}");
    String yaml = Contract.read(folder).yaml();
    assertTrue(yaml.contains("on\": \"2026-01-01\"") || yaml.contains("on: \"2026-01-01\""), yaml);
    assertTrue(yaml.contains("at: \"12:30\""), yaml);
    assertTrue(yaml.contains("word: plain"), yaml);
    assertTrue(yaml.contains("\"200\": \"no\""), yaml);
  }

  private void file(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private void assertBundled(String pointer, String expected) throws IOException {
    assertEquals(expected, Contract.read(folder).document().at(pointer).asText(), pointer);
  }

  private void assertRefused(String file, String what) {
    var refusal = assertThrows(IllegalStateException.class, () -> Contract.read(folder));
    assertTrue(refusal.getMessage().startsWith(file + ": "), refusal.getMessage());
    assertTrue(refusal.getMessage().contains(what), refusal.getMessage());
  }
}
