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
import java.util.Optional;

/**
 * The one contract of the service, as a single OpenAPI 3.0 document without references to files.
 *
 * <p>Immutable: every node handed out is a copy.
 */
public final class Contract {
  private final ObjectNode document;
  private final Map<String, JsonNode> examples;
  private final String yaml;

  private Contract(ObjectNode document, Map<String, JsonNode> examples, String yaml) {
    this.document = document;
    this.examples = examples;
    this.yaml = yaml;
  }

  /**
   * The contract that is packed with this class: as its build bundled it, for a start that does not
   * wait for its many files; from these where the class was only compiled.
   *
   * @throws IllegalStateException if two components have one name or a reference leads nowhere
   */
  public static Contract load() {
    try {
      Optional<Bundle> bundle = Bundle.find();
      return bundle.isPresent() ? of(bundle.get()) : fromFiles();
    } catch (IOException e) {
      throw unreadable(e);
    }
  }

  private static Contract of(Bundle bundle) {
    return new Contract(bundle.document(), bundle.examples(), bundle.yaml());
  }

  /** The contract, bundled from the files that are packed with this class. */
  static Contract fromFiles() {
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
      throw unreadable(e);
    }
  }

  private static IllegalStateException unreadable(Exception e) {
    return new IllegalStateException("The contract cannot be read: " + e.getMessage(), e);
  }

  static Contract read(Path folder) throws IOException {
    ContractFiles files = new ContractFiles(folder);
    ObjectNode document = new Bundler(files).bundle();
    return new Contract(document, files.examples(), ContractFiles.yaml(document));
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

  /**
   * Bundles the contract.
   *
   * @param arguments the file that gets it as YAML, and the folder of classes that gets it for
   *     {@link #load()}; without the latter that is left as it is
   */
  public static void main(String[] arguments) throws IOException {
    Contract contract = fromFiles();
    Path file = Path.of(arguments[0]);
    Files.createDirectories(file.toAbsolutePath().getParent());
    Files.writeString(file, contract.yaml());
    if (arguments.length > 1) {
      new Bundle(contract.document, contract.examples, contract.yaml).write(Path.of(arguments[1]));
    }
  }
}
