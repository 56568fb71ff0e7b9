package dev.fillplane.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.plan.Methods;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The page of safety notes has each note once, with its words, its basis and its method. */
class SafetyDocTest {

  private static final Pattern ROW =
      Pattern.compile("\\| `([a-z-]+)` \\| ([a-z, ]+) \\| ([^|]+) \\| ([^|]+) \\| `([a-z-]+)` \\|");

  @Test
  void eachNoteWithItsWords() throws IOException {
    Map<String, Set<String>> words = new TreeMap<>();
    for (Note note : EveryNote.all()) {
      words
          .computeIfAbsent(note.code(), code -> new TreeSet<>())
          .add(note.severity().name().toLowerCase(Locale.ROOT));
    }
    Map<String, MatchResult> rows = rows();
    assertEquals(words.keySet(), rows.keySet());
    words.forEach((code, seen) -> assertTrue(told(rows.get(code)).containsAll(seen), code));
  }

  @Test
  void eachBasisAsTheNoteTellsIt() throws IOException {
    Map<String, MatchResult> rows = rows();
    for (Note note : EveryNote.all()) {
      String limits = SilicaLimits.text(Optional.empty());
      assertEquals(
          note.basis().replace(limits, "limits of silica").replace("|", "/"),
          rows.get(note.code()).group(4),
          note.code());
    }
  }

  @Test
  void eachHasAMethodWithASource() throws IOException {
    rows()
        .forEach(
            (code, row) -> {
              assertTrue(Methods.ids().contains(row.group(5)), code);
              assertFalse(row.group(3).isBlank(), code);
            });
  }

  private static Set<String> told(MatchResult row) {
    return Pattern.compile(", ").splitAsStream(row.group(2)).collect(Collectors.toSet());
  }

  private static Map<String, MatchResult> rows() throws IOException {
    Map<String, MatchResult> rows = new TreeMap<>();
    for (String line : Files.readAllLines(Path.of("../docs/safety.md"))) {
      ROW.matcher(line)
          .results()
          .forEach(row -> assertEquals(null, rows.put(row.group(1), row), "twice"));
    }
    return rows;
  }
}
