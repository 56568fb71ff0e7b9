package dev.fillplane.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every note has a sentence that mentions only what the note knows, and all that it knows. */
class NoteSentencesTest {

  /** How the codes of lifting and dust checks begin. */
  private static final List<String> CHECKS = List.of("lift-", "lifting-", "dust-", "wheel-");

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\w+)\\}");

  @Test
  void sentencesMentionTheValuesOfTheirNotes() throws IOException {
    Properties sentences = sentences();
    Set<String> codes = new TreeSet<>();
    for (Note note : EveryNote.all()) {
      codes.add(note.code());
      String sentence = sentences.getProperty(note.code());
      assertTrue(sentence != null, note.code());
      Set<String> mentioned =
          PLACEHOLDER
              .matcher(sentence)
              .results()
              .map((MatchResult match) -> match.group(1))
              .collect(Collectors.toCollection(TreeSet::new));
      assertEquals(new TreeSet<>(note.values().keySet()), mentioned, note.code());
    }
    assertEquals(EveryNote.CODES, codes.size());
  }

  /** Every number in a sentence comes from the computation. */
  @Test
  void noSentenceHasANumberOfItsOwn() throws IOException {
    Properties sentences = sentences();
    Set<String> codes = new TreeSet<>();
    EveryNote.all().forEach(note -> codes.add(note.code()));
    sentences.stringPropertyNames().stream()
        .filter(code -> CHECKS.stream().anyMatch(code::startsWith))
        .forEach(codes::add);
    assertTrue(codes.size() > EveryNote.CODES + 25, codes.toString());
    Set<String> own = new TreeSet<>();
    for (String code : codes) {
      if (sentences.getProperty(code).matches(".*\\d.*")) {
        own.add(code);
      }
    }
    assertEquals(Set.of(), own);
  }

  private static Properties sentences() throws IOException {
    Properties sentences = new Properties();
    try (Reader reader =
        new InputStreamReader(
            NoteSentencesTest.class.getResourceAsStream("/dev/fillplane/web/sentences.properties"),
            StandardCharsets.UTF_8)) {
      sentences.load(reader);
    }
    return sentences;
  }
}
