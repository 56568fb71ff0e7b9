package dev.fillplane.web.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class FindingsDocTest {

  private static final Pattern ROW = Pattern.compile("\\| `([a-z0-9-]+)` \\|.*\\| ([^|]+) \\|");

  /** Each code once, none besides, and with the sentence that the service says. */
  @Test
  void thePageOfFindingsHasEachCodeWithItsSentence() throws IOException {
    Map<String, String> told = new TreeMap<>();
    for (String line : Files.readAllLines(Path.of("../docs/findings.md"))) {
      Matcher row = ROW.matcher(line);
      if (row.matches()) {
        told.merge(row.group(1), row.group(2), (one, other) -> "told twice");
      }
    }
    assertEquals(sentences(), told);
  }

  private static Map<String, String> sentences() throws IOException {
    Properties properties = new Properties();
    try (InputStream in =
        FindingsDocTest.class.getResourceAsStream("/dev/fillplane/web/sentences.properties")) {
      properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
    Map<String, String> sentences = new TreeMap<>();
    properties.stringPropertyNames().forEach(c -> sentences.put(c, properties.getProperty(c)));
    return sentences;
  }
}
