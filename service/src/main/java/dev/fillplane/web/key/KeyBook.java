package dev.fillplane.web.key;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * The keys of a file, read again whenever it was edited. An edit that cannot be read, is damaged or
 * half written leaves the keys before in force, and says so. Safe to share.
 */
public final class KeyBook {

  /** Compared with where there is no such key, so that this takes as long as a wrong secret. */
  private static final String NOBODY = "0".repeat(64);

  private final Path file;
  private final Consumer<String> log;
  private volatile Content content;

  private KeyBook(Path file, Consumer<String> log, Content content) {
    this.file = file;
    this.log = log;
    this.content = content;
  }

  /** What was read, and when and how long the file was then; a file that is gone has no stamp. */
  private record Content(Optional<Object> stamp, Map<String, Key> keys, Set<String> origins) {

    static Content of(Optional<Object> stamp, List<Key> list) {
      Map<String, Key> keys = new LinkedHashMap<>();
      Set<String> origins = new TreeSet<>();
      for (Key key : list) {
        keys.put(key.id(), key);
        origins.addAll(key.origins());
      }
      return new Content(stamp, keys, origins);
    }
  }

  /**
   * The keys of {@code file}; {@code log} is told of every edit.
   *
   * @throws IOException if it cannot be read or is damaged
   */
  public static KeyBook open(Path file, Consumer<String> log) throws IOException {
    Optional<Object> stamp = stamp(file);
    return new KeyBook(file, log, Content.of(stamp, KeyFile.read(file)));
  }

  /** The key that {@code text} writes, if it is one of these. */
  public Optional<Key> find(String text) {
    Optional<Written> written = Written.of(text);
    if (written.isEmpty()) {
      return Optional.empty();
    }
    Key key = current().keys().get(written.get().id());
    if (key == null) {
      Key.sameHash(NOBODY, written.get().secret());
      return Optional.empty();
    }
    return key.opens(written.get().secret()) ? Optional.of(key) : Optional.empty();
  }

  /** Whether a page of {@code origin} may use some key. */
  public boolean knowsOrigin(String origin) {
    return current().origins().contains(origin);
  }

  /** Whether there is no key, so that nobody is let in. */
  public boolean isEmpty() {
    return current().keys().isEmpty();
  }

  private Content current() {
    Optional<Object> stamp = stamp(file);
    if (!stamp.equals(content.stamp())) {
      readAgain(stamp);
    }
    return content;
  }

  /** The stamp is older than what is read, so that an edit in between is noticed next time. */
  private synchronized void readAgain(Optional<Object> stamp) {
    if (stamp.equals(content.stamp())) {
      return;
    }
    try {
      content = Content.of(stamp, KeyFile.read(file));
      log.accept("The keys of " + file + " were read again: " + content.keys().size() + ".");
    } catch (IOException e) {
      content = new Content(stamp, content.keys(), content.origins());
      log.accept("The keys before stay in force: " + file + " cannot be used. " + why(e));
    }
  }

  private static String why(IOException e) {
    return e.getClass() == IOException.class ? e.getMessage() : "It cannot be read.";
  }

  private static Optional<Object> stamp(Path file) {
    try {
      BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
      return Optional.of(
          List.of(now.lastModifiedTime(), now.size(), String.valueOf(now.fileKey())));
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
