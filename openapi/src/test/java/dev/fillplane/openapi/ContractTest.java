package dev.fillplane.openapi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packed contract, read as the service and the client generator read it. */
class ContractTest {
  private final Contract contract = Contract.load();

  @Test
  void isOneDocument() {
    List<JsonNode> references = contract.document().findValues("$ref");
    assertFalse(references.isEmpty());
    for (JsonNode reference : references) {
      assertTrue(reference.textValue().startsWith("#/components/"), reference.textValue());
    }
    assertTrue(contract.document().at("/paths/~1health~1live/get/operationId").isTextual());
  }

  @Test
  void textSaysTheSameAsTheDocument() throws Exception {
    JsonNode read = new ObjectMapper(new YAMLFactory()).readTree(contract.yaml());
    assertEquals(contract.document(), read);
  }

  /** What the build packs must not grow old. */
  @Test
  void isPackedAsItsFilesSay() throws Exception {
    Contract files = Contract.fromFiles();
    Bundle packed = Bundle.find().orElseThrow();
    assertEquals(files.document(), packed.document());
    assertEquals(files.yaml(), packed.yaml());
    assertFalse(packed.examples().isEmpty());
    packed.examples().forEach((name, example) -> assertEquals(files.example(name), example, name));
  }

  @Test
  void handsOutCopies() {
    contract.document().removeAll();
    assertTrue(contract.document().has("openapi"));
  }

  @Test
  void refusesUnknownNames() {
    assertThrows(IllegalArgumentException.class, () -> contract.schema("Nothing"));
    assertThrows(IllegalArgumentException.class, () -> contract.example("nothing.json"));
  }

  @Test
  void writesTheBundleToAFile(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("new/openapi.yaml");
    Contract.main(new String[] {file.toString()});
    assertEquals(contract.yaml(), Files.readString(file));
  }
}
