package dev.fillplane.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarFile;
import org.junit.jupiter.api.Test;

/** What of others is in the built jar, and under which licences. */
class LicencesIT {

  /** Licences under which a library may be in the jar; the GPL alone is none of them. */
  private static final Set<String> TAKEN =
      Set.of(
          "Apache-2.0",
          "MIT",
          "BSD-2-Clause",
          "BSD-3-Clause",
          "EPL-2.0",
          "EPL 1.0",
          "MPL-2.0",
          "LGPL-2.1-or-later",
          "CC0-1.0");

  private static final Path PAGE = Path.of("..", "docs", "licences.md");
  private static final String BILL = "META-INF/sbom/bom.json";

  @Test
  void everyLibraryMayBeThere() throws IOException {
    Set<String> refused = new TreeSet<>();
    licences()
        .forEach(
            (library, licences) -> {
              if (licences.stream().noneMatch(TAKEN::contains)) {
                refused.add(library + " " + licences);
              }
            });
    assertEquals(Set.of(), refused);
  }

  @Test
  void thePageListsThem() throws IOException {
    String table = "|---|---|---|\n";
    String page = Files.readString(PAGE);
    int rows = page.indexOf(table) + table.length();
    StringBuilder told = new StringBuilder(page.substring(0, rows));
    licences()
        .forEach(
            (library, licences) ->
                told.append("| ")
                    .append(library.replace(" ", " | "))
                    .append(" | ")
                    .append(String.join(", ", licences))
                    .append(" |\n"));
    if ("write".equals(System.getProperty("golden"))) {
      Files.writeString(PAGE, told);
    }
    assertEquals(told.toString(), Files.readString(PAGE));
  }

  @Test
  void theirTextsAreThere() throws IOException {
    try (JarFile jar = jar()) {
      assertTrue(
          jar.stream()
                  .filter(
                      entry -> entry.getName().matches("META-INF/licenses/.*(LICENSE|NOTICE).*"))
                  .count()
              > 50);
    }
  }

  /** The licences of each library with its version, in order. */
  private static Map<String, List<String>> licences() throws IOException {
    Map<String, List<String>> licences = new TreeMap<>();
    for (JsonNode part : bill().get("components")) {
      if (!part.get("group").asText().startsWith("dev.fillplane")) {
        String library = part.get("group").asText() + ":" + part.get("name").asText();
        licences.put(library + " " + part.get("version").asText(), told(part.path("licenses")));
      }
    }
    return licences;
  }

  private static List<String> told(JsonNode licences) {
    List<String> told = new ArrayList<>();
    for (JsonNode choice : licences) {
      JsonNode licence = choice.path("license");
      told.add(licence.path("id").asText(licence.path("name").asText()));
    }
    return told;
  }

  /** A build without a network makes none. */
  private static JsonNode bill() throws IOException {
    try (JarFile jar = jar()) {
      assumeTrue(jar.getEntry(BILL) != null, "the jar was built offline, without its bill");
      try (InputStream in = jar.getInputStream(jar.getEntry(BILL))) {
        return new ObjectMapper().readTree(in);
      }
    }
  }

  private static JarFile jar() throws IOException {
    return new JarFile(System.getProperty("fillplane.jar"));
  }
}
