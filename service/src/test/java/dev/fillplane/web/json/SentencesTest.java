package dev.fillplane.web.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
