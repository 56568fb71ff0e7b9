package dev.fillplane.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Puts the reports that were made into {@code docs/performance.md}, between its marks. */
public final class Figures {

  private static final Path DOCUMENT = Path.of("../docs/performance.md");
  private static final String BEGIN = "<!-- measured: begin -->\n";
  private static final String END = "<!-- measured: end -->";
  private static final List<String> REPORTS =
      List.of("kernels", "plan-against-kernels", "peers", "load");

  private Figures() {}

  /** Takes no arguments. */
  public static void main(String[] args) throws IOException {
    StringBuilder all = new StringBuilder("\n");
    for (String report : REPORTS) {
      Path file = Path.of("target", report + ".md");
      if (Files.exists(file)) {
        all.append(Files.readString(file).strip()).append("\n\n");
      }
    }
    String text = Files.readString(DOCUMENT);
    int from = text.indexOf(BEGIN) + BEGIN.length();
    int to = text.indexOf(END);
    if (from < BEGIN.length() || to < from) {
      throw new IOException("no marks in " + DOCUMENT);
    }
    Files.writeString(DOCUMENT, text.substring(0, from) + all + text.substring(to));
  }
}
