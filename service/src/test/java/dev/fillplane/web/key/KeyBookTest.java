package dev.fillplane.web.key;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeyBookTest {

  @TempDir private Path folder;
  private final List<String> log = new ArrayList<>();
  private final NewKey first = make();
  private final NewKey second = make();
  private Path file;
  private KeyBook book;

  @BeforeEach
  void open() throws IOException {
    file = folder.resolve("keys.json");
    KeyFile.write(file, List.of(first.key()));
    book = KeyBook.open(file, log::add);
  }

  @Test
  void findsWhoHasTheSecret() {
    assertEquals(Optional.of(first.key()), book.find(first.text()));
    assertEquals(Optional.empty(), book.find(second.text()));
    assertEquals(Optional.empty(), book.find(first.text().substring(0, 16) + "a".repeat(43)));
    for (String text : List.of("", "fp_", first.key().id(), first.text() + "a", "\u0000")) {
      assertEquals(Optional.empty(), book.find(text));
    }
    assertEquals(List.of(), log);
  }

  @Test
  void editsAreTaken() throws IOException {
    KeyFile.write(file, List.of(second.key()));
    assertEquals(Optional.empty(), book.find(first.text()));
    assertEquals(Optional.of(second.key()), book.find(second.text()));
    assertEquals(1, log.size(), log.toString());
  }

  @Test
  void noKeyIsAnEditAsWell() throws IOException {
    assertFalse(book.isEmpty());
    KeyFile.write(file, List.of());
    assertEquals(Optional.empty(), book.find(first.text()));
    assertTrue(book.isEmpty());
  }

  /** Every beginning of a file, as an editor that is writing it leaves it for a moment. */
  @Test
  void halfWrittenFilesKeepTheKeysBefore() throws IOException {
    KeyFile.write(folder.resolve("next"), List.of(second.key()));
    String next = Files.readString(folder.resolve("next")).strip();
    for (int length = 0; length < next.length(); length += 7) {
      Files.writeString(file, next.substring(0, length));
      assertTrue(book.find(first.text()).isPresent(), next.substring(0, length));
    }
    Files.writeString(file, next);
    assertTrue(book.find(first.text()).isEmpty());
    assertTrue(book.find(second.text()).isPresent());
    assertTrue(log.get(0).startsWith("The keys before stay in force: "), log.get(0));
    assertTrue(log.get(0).endsWith("It has no list of keys."), log.get(0));
    assertTrue(log.get(1).endsWith("It is not the JSON of a file of keys."), log.get(1));
  }

  @Test
  void damageIsToldOnce() throws IOException {
    Files.writeString(file, "{\"keys\": 7}");
    book.find(first.text());
    book.find(first.text());
    assertEquals(1, log.size(), log.toString());
  }

  @Test
  void fileThatIsGoneKeepsTheKeysBefore() throws IOException {
    Files.delete(file);
    assertTrue(book.find(first.text()).isPresent());
    assertTrue(log.get(0).endsWith(" cannot be used. It cannot be read."), log.get(0));
    KeyFile.write(file, List.of(second.key()));
    assertTrue(book.find(second.text()).isPresent());
  }

  @Test
  void logTellsNoKey() throws IOException {
    Files.writeString(file, "{\"keys\": [{\"id\": \"" + first.text() + "\"}]}");
    book.find(first.text());
    assertEquals(1, log.size());
    assertFalse(log.get(0).contains("fp_"), log.get(0));
  }

  @Test
  void doesNotOpenOnDamage() throws IOException {
    Files.writeString(file, "[]");
    assertThrows(IOException.class, () -> KeyBook.open(file, log::add));
    Files.delete(file);
    assertThrows(IOException.class, () -> KeyBook.open(file, log::add));
  }

  private static NewKey make() {
    return NewKey.make(KeyFileTest.wish(List.of(Scope.CALCULATE)), LocalDate.of(2026, 3, 1));
  }
}
