package dev.fillplane.web.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
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
  void aGapOverItsLimitDoesNotReadAsTheLimit() {
    Map<String, Object> far = gaps(0.005, 0.003);
    assertTrue(sentence("floor-passes-already", far).contains("is 3/16 in, and 1/8 in"), "apart");
    Map<String, Object> near = gaps(0.005, 0.0048);
    assertTrue(sentence("floor-passes-already", near).contains("is 0.2 in, and 0.19 in"), "near");
    Map<String, Object> same = gaps(0.005, 0.005);
    assertTrue(sentence("floor-passes-already", same).contains("is 3/16 in, and 3/16 in"), "same");
  }

  /** What was measured, and ranges that are held to the last digit, are no marks of a tape. */
  @Test
  void rangesAreExact() {
    Map<String, Object> values =
        Map.of(
            "name",
            "depth",
            "told",
            Amount.of(0.6, Dimension.HEIGHT),
            "from",
            Amount.of(0.0005, Dimension.HEIGHT),
            "to",
            Amount.of(0.5, Dimension.HEIGHT));
    assertEquals(
        "The depth is 23.6 in; it must lie between 0.02 in and 19.7 in.",
        sentence("out-of-range", values));
  }

  private static Map<String, Object> gaps(double gap, double limit) {
    return Map.of(
        "gap",
        Amount.of(gap, Dimension.HEIGHT),
        "limit",
        Amount.of(limit, Dimension.HEIGHT),
        "straightedge",
        Amount.of(2, Dimension.PLAN),
        "bags",
        3);
  }

  private static String sentence(String code, Map<String, Object> values) {
    return Sentences.of(code, values, UnitSystem.US);
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
