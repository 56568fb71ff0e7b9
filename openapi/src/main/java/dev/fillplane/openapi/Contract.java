package dev.fillplane.openapi;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/**
 * The one contract of the service, as a single OpenAPI 3.0 document without references to files.
 *
 * <p>Immutable: every node handed out is a copy.
 */
public final class Contract {
  private final ObjectNode document;
  private final Map<String, JsonNode> examples;
  private final String yaml;

  private Contract(ObjectNode document, Map<String, JsonNode> examples) throws IOException {
    this.document = document;
    this.examples = examples;
    this.yaml = ContractFiles.yaml(document);
  }

  /**
   * Reads and bundles the contract that is packed with this class.
   *
   * @throws IllegalStateException if two components have one name or a reference leads nowhere
   */
  public static Contract load() {
    URL root = Contract.class.getResource("openapi.yaml");
    if (root == null) {
      throw new IllegalStateException("The contract's openapi.yaml is not packed with its class.");
    }
    try {
      if (!"jar".equals(root.getProtocol())) {
        return read(Path.of(root.toURI()).getParent());
      }
      JarURLConnection jar = (JarURLConnection) root.openConnection();
      try (FileSystem files = FileSystems.newFileSystem(Path.of(jar.getJarFileURL().toURI()))) {
        return read(files.getPath("/" + jar.getEntryName()).getParent());
      }
    } catch (IOException | URISyntaxException e) {
      throw new IllegalStateException("The contract cannot be read: " + e.getMessage(), e);
    }
  }

  static Contract read(Path folder) throws IOException {
    ContractFiles files = new ContractFiles(folder);
    return new Contract(new Bundler(files).bundle(), files.examples());
  }

  /** The whole document. */
  public ObjectNode document() {
    return document.deepCopy();
  }

  /** The whole document as YAML text. */
  public String yaml() {
    return yaml;
  }

  /**
   * A schema of {@code components/schemas}; references in it point into {@link #document()}.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  public JsonNode schema(String name) {
    JsonNode schema = document.path("components").path("schemas").path(name);
    if (schema.isMissingNode()) {
      throw new IllegalArgumentException("The contract has no schema " + name + ".");
    }
    return schema.deepCopy();
  }

  /**
   * The content of a file of the folder {@code examples}.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  public JsonNode example(String fileName) {
    JsonNode example = examples.get(fileName);
    if (example == null) {
      throw new IllegalArgumentException("The contract has no example " + fileName + ".");
    }
    return example.deepCopy();
  }

  /** Writes the bundled contract to the file named by the only argument. */
  public static void main(String[] arguments) throws IOException {
    Path file = Path.of(arguments[0]);
    Files.createDirectories(file.toAbsolutePath().getParent());
    Files.writeString(file, load().yaml());
  }
}
