package dev.fillplane.web.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SentencesTest {

  /** A code in the source: a kebab-case text of two words or more, alone in its quotes. */
  private static final Pattern CODE = Pattern.compile("\"([a-z0-9]+(?:-[a-z0-9]+)+)\"");

  @Test
  void everySentenceBelongsToACodeOfTheSource() throws IOException {
    String source = source();
    Set<String> unused = new TreeSet<>();
    for (String code : Sentences.codes()) {
      if (!source.contains('"' + code + '"')) {
        unused.add(code);
      }
    }
    assertEquals(Set.of(), unused);
  }

  @Test
  void everyFindingRemarkAndNoteHasASentence() throws IOException {
    Pattern use =
        Pattern.compile(
            "(?:error|warning|Remark\\.of|Note\\.of|refuse|warn|note)\\(\\s*" + CODE.pattern());
    Set<String> missing = new TreeSet<>();
    Matcher matcher = use.matcher(source());
    while (matcher.find()) {
      if (!Sentences.codes().contains(matcher.group(1))) {
        missing.add(matcher.group(1));
      }
    }
    assertEquals(Set.of(), missing);
  }

  @Test
  void amountsReadAsOnSite() {
    assertEquals("25 kg", text(25, Dimension.MASS, UnitSystem.METRIC));
    assertEquals("8.9 mm", text(0.00886, Dimension.HEIGHT, UnitSystem.METRIC));
    assertEquals("750 mm", text(0.75, Dimension.HEIGHT, UnitSystem.METRIC));
    assertEquals("29.5 in", text(0.75, Dimension.HEIGHT, UnitSystem.US));
    assertEquals("0.13 in", text(0.0032, Dimension.HEIGHT, UnitSystem.US));
    assertEquals("7.6 min", text(455, Dimension.TIME, UnitSystem.METRIC));
    assertEquals("100 m2", text(100, Dimension.AREA, UnitSystem.METRIC));
    assertEquals("0.01 m2", text(0.01, Dimension.AREA, UnitSystem.METRIC));
    assertEquals("0 mm", text(-1e-9, Dimension.HEIGHT, UnitSystem.METRIC));
  }

  private static String text(double si, Dimension dimension, UnitSystem system) {
    return Sentences.text(Amount.of(si, dimension), system);
  }

  private static String source() throws IOException {
    StringBuilder all = new StringBuilder();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(path -> path.toString().endsWith(".java")).sorted().toList()) {
        all.append(Files.readString(file));
      }
    }
    return all.toString();
  }
}
