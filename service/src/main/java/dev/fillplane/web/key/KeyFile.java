package dev.fillplane.web.key;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Json;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The file of keys: {@code {"keys": [...]}}. A file that was cut short is no JSON, so that half of
 * it is never taken for the whole.
 */
public final class KeyFile {

  private KeyFile() {}

  /** What the file holds. */
  record Content(List<JsonNode> keys) {}

  /**
   * The keys of {@code file}, in its order.
   *
   * @throws IOException with a sentence for people if it cannot be read or something in it is wrong
   */
  public static List<Key> read(Path file) throws IOException {
    List<JsonNode> entries = entries(Files.readAllBytes(file));
    List<Key> keys = new ArrayList<>();
    Set<String> ids = new TreeSet<>();
    for (JsonNode entry : entries) {
      Key key = key(entry, keys.size() + 1);
      if (!ids.add(key.id())) {
        throw new IOException("Key " + (keys.size() + 1) + " has the id of another.");
      }
      keys.add(key);
    }
    return keys;
  }

  private static List<JsonNode> entries(byte[] bytes) throws IOException {
    Content content;
    try {
      content = Json.read(Json.tree(bytes), Content.class, UnitSystem.METRIC);
    } catch (JsonProcessingException e) {
      throw new IOException("It is not the JSON of a file of keys.", e);
    }
    if (content == null || content.keys() == null) {
      throw new IOException("It has no list of keys.");
    }
    return content.keys();
  }

  private static Key key(JsonNode entry, int number) throws IOException {
    if (!entry.isObject()) {
      throw new IOException("Key " + number + " is not an object.");
    }
    try {
      return Json.read(entry, Key.class, UnitSystem.METRIC);
    } catch (JsonProcessingException e) {
      Throwable cause = e.getCause();
      String why =
          cause instanceof IllegalArgumentException
              ? cause.getMessage()
              : "a property is unknown or of the wrong type";
      throw new IOException("Key " + number + ": " + why + ".", e);
    }
  }

  /**
   * Writes {@code keys} in place of what {@code file} held; whoever reads it meanwhile sees the old
   * keys or the new ones, whole. A new file can be read by its owner only.
   */
  public static void write(Path file, List<Key> keys) throws IOException {
    JsonNode tree = Json.toTree(new Keys(keys), UnitSystem.METRIC);
    Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    Path fresh = Files.createTempFile(target.getParent(), "keys", ".new");
    try {
      Files.writeString(fresh, tree.toPrettyString() + "\n");
      keepPermissions(target, fresh);
      Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }

  private record Keys(List<Key> keys) {}

  /** A temporary file is its owner's alone; where there was a file, its readers stay. */
  private static void keepPermissions(Path from, Path to) throws IOException {
    boolean posix = Files.getFileStore(to).supportsFileAttributeView("posix");
    if (posix && Files.exists(from)) {
      Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
    } else if (posix) {
      Files.setPosixFilePermissions(to, PosixFilePermissions.fromString("rw-------"));
    }
  }
}
