package dev.fillplane.web.key;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeyFileTest {

  private static final String HASH = "0f".repeat(32);
  private static final String ENTRY =
      "{'id':'abcdefghijkl','name':'office','sha256':'" + HASH + "','scopes':['calculate']}";

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void file() {
    file = folder.resolve("keys.json");
  }

  @Test
  void holdsNoSecret() throws IOException {
    NewKey made = NewKey.make(wish(List.of(Scope.CALCULATE)), LocalDate.of(2026, 3, 1));
    KeyFile.write(file, List.of(made.key()));
    String text = Files.readString(file);
    assertTrue(made.text().matches("fp_[a-z0-9]{12}_[A-Za-z0-9_-]{43}"));
    assertFalse(text.contains(made.text().substring(16)), text);
    assertTrue(text.contains("\"made\" : \"2026-03-01\""), text);
    assertEquals(List.of(made.key()), KeyFile.read(file));
    assertFalse(made.toString().contains(made.text().substring(16)));
  }

  @Test
  void keepsItsReaders() throws IOException {
    KeyFile.write(file, List.of());
    assertEquals(PosixFilePermissions.fromString("rw-------"), Files.getPosixFilePermissions(file));
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    KeyFile.write(file, List.of());
    assertEquals(PosixFilePermissions.fromString("rw-r-----"), Files.getPosixFilePermissions(file));
    try (var files = Files.list(folder)) {
      assertEquals(List.of(file), files.toList());
    }
  }

  @Test
  void fewPropertiesAreNeeded() throws IOException {
    write("{'keys':[" + ENTRY + "]}");
    Key key = KeyFile.read(file).get(0);
    assertEquals("abcdefghijkl", key.tenant());
    assertEquals(List.of(), key.origins());
    assertEquals(OptionalInt.empty(), key.perMinute());
    assertEquals(Optional.empty(), key.made());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "{'keys':[E,E]} | Key 2 has the id of another.",
        "{'keys':[E | It is not the JSON of a file of keys.",
        "'' | It has no list of keys.",
        "null | It has no list of keys.",
        "{} | It has no list of keys.",
        "{'keys':[],'more':1} | It is not the JSON of a file of keys.",
        "{'keys':[null]} | Key 1 is not an object.",
        "{'keys':[E,7]} | Key 2 is not an object.",
        "{'keys':[{}]} | Key 1: its id must be 12 small letters and digits.",
        "{'keys':[{'id':'local'}]} | Key 1: its id must be 12 small letters and digits.",
      })
  void damagedFilesAreRefused(String content, String sentence) throws IOException {
    write(content.equals("''") ? "" : content.replace("E", ENTRY));
    assertEquals(sentence, assertThrows(IOException.class, () -> KeyFile.read(file)).getMessage());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "'name':'office' | 'name':' ' | it needs a name",
        "'sha256':'0f | 'sha256':'xf | its sha256 must be 64 hex digits",
        "['calculate'] | [] | it needs a scope",
        "['calculate'] | ['all'] | a property is unknown or of the wrong type",
        "['calculate'] | ['browser'] | origins belong to the scope browser, which needs one",
        "['calculate'] | ['browser','jobs'] | browser must be its only scope: pages tell their keys",
        "'name' | 'origins':['https://a.example'],'name'"
            + " | origins belong to the scope browser, which needs one",
        "'name' | 'perMinute':0,'name' | its perMinute must be 1 or more",
        "'name' | 'tenant':'local','name' | its tenant must be 12 small letters and digits",
        "'name' | 'secret':'x','name' | a property is unknown or of the wrong type",
      })
  void damagedKeysAreRefused(String from, String to, String why) throws IOException {
    write("{'keys':[" + ENTRY.replace(from, to) + "]}");
    IOException refusal = assertThrows(IOException.class, () -> KeyFile.read(file));
    assertEquals("Key 1: " + why + ".", refusal.getMessage());
  }

  private void write(String content) throws IOException {
    Files.writeString(file, content.replace('\'', '"'));
  }

  static NewKey.Wish wish(List<Scope> scopes) {
    return new NewKey.Wish("office", scopes, List.of(), OptionalInt.empty(), Optional.empty());
  }
}
