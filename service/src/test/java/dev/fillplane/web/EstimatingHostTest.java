package dev.fillplane.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.example.estimates.EstimateFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The page about an estimating host: its sources are those that are compiled here, and they do what
 * it says; {@code -Dgolden=write} writes sources and output into it anew.
 */
class EstimatingHostTest {
  private static final Path PAGE = Path.of("..", "docs", "integrations", "estimating-host.md");
  private static final Path SOURCES = Path.of("src/test/java/org/example/estimates");
  private static final Path SERVICES = Path.of("src/test/resources/META-INF/services");
  private static final String HOST = "dev.fillplane.client.host.Host";
  private static final int SHOWN_LINES = 6;

  @ParameterizedTest
  @ValueSource(
      strings = {"FolderHost.java", "TableSink.java", "EstimateFolder.java", "JobNews.java"})
  void theSourcesOnThePageAreTheseSources(String name) throws IOException {
    holds(name, Files.readString(SOURCES.resolve(name)));
  }

  @Test
  void theServiceFileIsThisOne() throws IOException {
    holds("META-INF/services/" + HOST, Files.readString(SERVICES.resolve(HOST)));
  }

  @Test
  void theExampleDoesWhatThePageSays(@TempDir Path folder) throws IOException {
    String page = Files.readString(PAGE);
    Files.writeString(folder.resolve("rooms.csv"), block(page, "rooms.csv"));
    Files.writeString(folder.resolve("readings.csv"), block(page, "readings.csv"));
    holds("console", printed(folder));
    String lines =
        Files.readAllLines(folder.resolve("lines.csv")).stream()
            .limit(SHOWN_LINES)
            .collect(Collectors.joining("\n", "", "\n"));
    holds("lines.csv", lines);
  }

  /** What the example prints; its host is found by ServiceLoader. */
  private static String printed(Path folder) {
    PrintStream console = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setProperty("estimates.folder", folder.toString());
    System.setOut(new PrintStream(printed, true, UTF_8));
    try {
      EstimateFolder.main(new String[] {RunningService.uri().toString()});
    } finally {
      System.setOut(console);
      System.clearProperty("estimates.folder");
    }
    return printed.toString(UTF_8).replace(System.lineSeparator(), "\n");
  }

  private static void holds(String name, String real) throws IOException {
    String page = Files.readString(PAGE);
    if ("write".equals(System.getProperty("golden"))) {
      page = page.replace(block(page, name), real);
      Files.writeString(PAGE, page);
    }
    assertEquals(real, block(page, name));
  }

  /** The block that follows the name of a file. */
  private static String block(String page, String name) {
    String pattern = "`" + Pattern.quote(name) + "`[^`]*:\\n\\n```[a-z]*\\n(.*?)```\\n";
    Matcher matcher = Pattern.compile(pattern, Pattern.DOTALL).matcher(page);
    assertTrue(matcher.find(), name);
    return matcher.group(1);
  }
}
