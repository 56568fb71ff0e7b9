package dev.fillplane.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** What a run found, printed as it comes and kept as Markdown under {@code target}. */
public final class Report {

  private final Path file;
  private final StringBuilder text = new StringBuilder();

  /** A report that says first when it was made, and on what. */
  public Report(String name, String title) throws IOException {
    file = Path.of("target", name + ".md");
    add("## " + title + "\n\n" + machine() + "\n");
  }

  /** Adds a part and keeps the report as far as it has come. */
  public void add(String part) throws IOException {
    System.out.println(part);
    text.append(part).append('\n');
    Files.createDirectories(file.toAbsolutePath().getParent());
    Files.writeString(file, text, StandardCharsets.UTF_8);
  }

  private static String machine() throws IOException {
    return "Measured on "
        + ZonedDateTime.now(ZoneOffset.UTC)
            .format(DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm 'UTC'", Locale.ROOT))
        + ": "
        + Runtime.getRuntime().availableProcessors()
        + " processors ("
        + processor()
        + "), "
        + System.getProperty("os.name")
        + ", "
        + System.getProperty("java.vm.name")
        + " "
        + System.getProperty("java.vm.version")
        + "; load before it began "
        + load()
        + ".";
  }

  private static String processor() throws IOException {
    Path info = Path.of("/proc/cpuinfo");
    List<String> lines = Files.exists(info) ? Files.readAllLines(info) : List.of();
    return lines.stream()
        .filter(line -> line.startsWith("model name"))
        .map(line -> line.substring(line.indexOf(':') + 1).trim())
        .findFirst()
        .orElse(System.getProperty("os.arch"));
  }

  /** Of the last minute; what else ran then makes the figures worthless. */
  private static String load() {
    double load =
        java.lang.management.ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
    return String.format(Locale.ROOT, "%.1f", load);
  }
}
