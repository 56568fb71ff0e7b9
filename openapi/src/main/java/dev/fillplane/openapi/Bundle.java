package dev.fillplane.openapi;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The contract as the build packs it: one JSON with its examples, and the same as YAML. */
record Bundle(ObjectNode document, Map<String, JsonNode> examples, String yaml) {

  private static final String JSON_FILE = "bundle.json";
  private static final String YAML_FILE = "bundle.yaml";
  private static final String DOCUMENT = "document";
  private static final String EXAMPLES = "examples";
  private static final JsonMapper JSON = new JsonMapper();

  /** The one that is packed with this class; none where it was not built. */
  static Optional<Bundle> find() throws IOException {
    try (InputStream json = Bundle.class.getResourceAsStream(JSON_FILE);
        InputStream yaml = Bundle.class.getResourceAsStream(YAML_FILE)) {
      if (json == null || yaml == null) {
        return Optional.empty();
      }
      JsonNode whole = JSON.readTree(json);
      Map<String, JsonNode> examples = new TreeMap<>();
      whole.get(EXAMPLES).properties().forEach(it -> examples.put(it.getKey(), it.getValue()));
      String text = new String(yaml.readAllBytes(), StandardCharsets.UTF_8);
      return Optional.of(new Bundle((ObjectNode) whole.get(DOCUMENT), examples, text));
    }
  }

  /** Packs it into the folder of classes that is told. */
  void write(Path classes) throws IOException {
    Path folder = classes.resolve(Bundle.class.getPackageName().replace('.', '/'));
    ObjectNode whole = JSON.createObjectNode();
    whole.set(DOCUMENT, document);
    ObjectNode listed = whole.putObject(EXAMPLES);
    examples.forEach(listed::set);
    Files.write(folder.resolve(JSON_FILE), JSON.writeValueAsBytes(whole));
    Files.writeString(folder.resolve(YAML_FILE), yaml);
  }
}
