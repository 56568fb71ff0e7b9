package dev.fillplane.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.fillplane.openapi.Contract;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The built jar as a process of its own, in 256 MB of heap. */
class CommandLineIT {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final long PATIENCE_SECONDS = 120;

  @TempDir private Path folder;

  /** How a process ended and what it said. */
  private record Ended(int code, String out, String err) {

    List<JsonNode> lines() throws IOException {
      List<JsonNode> lines = new ArrayList<>();
      for (String line : out.lines().toList()) {
        lines.add(JSON.readTree(line));
      }
      return lines;
    }
  }

  @Test
  void demoTellsThePlanAndWritesIt() throws Exception {
    Ended demo = run("demo", "--out", folder.resolve("demo").toString());
    assertEquals(0, demo.code(), demo.err());
    JsonNode plan = JSON.readTree(folder.resolve("demo/plan.json").toFile());
    assertEquals("metric", plan.get("units").textValue());
    says(
        demo,
        "sample floor (invented)",
        "High spot",
        "Low spot",
        "order " + plan.at("/quantities/bags/order").intValue(),
        "Order of pouring",
        "Wet edge          " + plan.at("/pour/verdict").textValue(),
        " mm deep at x ",
        "Batches",
        "If it goes wrong",
        "What to watch",
        "DANGER: ",
        "This is an estimate. Local code, the data sheet and licensed practice decide.");
    var svg =
        DocumentBuilderFactory.newDefaultNSInstance()
            .newDocumentBuilder()
            .parse(folder.resolve("demo/depth-map.svg").toFile());
    assertEquals("svg", svg.getDocumentElement().getLocalName());
    byte[] sheet = Files.readAllBytes(folder.resolve("demo/pour-sheet.pdf"));
    assertEquals("%PDF-", new String(sheet, 0, 5, StandardCharsets.US_ASCII));
  }

  @Test
  void demoInUsUnits() throws Exception {
    Ended demo = run("demo", "--units", "us", "--out", folder.toString());
    assertEquals(0, demo.code(), demo.err());
    says(demo, " in deep at x ", " sq ft", " qt for each batch", " F with water of ");
    JsonNode plan = JSON.readTree(folder.resolve("plan.json").toFile());
    assertEquals("us", plan.get("units").textValue());
    assertTrue(plan.at("/depth/grid/depths").size() > 1000);
  }

  @Test
  void demoInUnknownUnits() throws Exception {
    assertEquals(2, run("demo", "--units", "imperial", "--out", folder.toString()).code());
    assertEquals(0, folder.toFile().list().length);
  }

  @Test
  void plansAFile() throws Exception {
    Path file = write("floor.json", example("sample-metric.json").toPrettyString());
    Ended plan = run("plan", file.toString());
    assertEquals(0, plan.code(), plan.err());
    assertEquals(1, plan.lines().size());
    assertEquals("sample floor (invented)", plan.lines().get(0).get("reference").textValue());
    assertTrue(plan.lines().get(0).at("/quantities/bags/order").intValue() > 0);
  }

  @Test
  void plansLinesAndTellsWhichOneCannotBePlanned() throws Exception {
    Path file =
        write(
            "floors.ndjson",
            example("rectangle.json")
                + "\n"
                + example("bad-request.json")
                + "\n\n"
                + example("table.json")
                + "\n");
    Ended plans = run("plan", file.toString());
    assertEquals(1, plans.code(), plans.err());
    List<JsonNode> lines = plans.lines();
    assertEquals(3, lines.size());
    assertTrue(lines.get(0).has("depth"));
    assertEquals(422, lines.get(1).get("status").intValue());
    assertEquals("#/survey/benchmarks/0/point", lines.get(1).at("/errors/1/pointer").textValue());
    assertTrue(lines.get(2).has("depth"));
    assertTrue(plans.err().contains("floors.ndjson line 2"), plans.err());
    assertFalse(plans.err().contains("line 1 "), plans.err());
  }

  @Test
  void missingFileAndMissingCommand() throws Exception {
    Ended missing = run("plan", folder.resolve("nowhere.json").toString());
    assertEquals(2, missing.code());
    assertTrue(missing.err().contains("nowhere.json"), missing.err());
    assertEquals("", missing.out());
    assertEquals(2, run("plan").code());
    assertEquals(2, run("pour").code());
  }

  @Test
  void servesUntilItIsStopped() throws Exception {
    Process process = start("serve", "--port", "0");
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      String line = out.readLine();
      assertTrue(line.matches("Listening on http://127\\.0\\.0\\.1:[1-9]\\d*"), line);
      URI ready = URI.create(line.substring("Listening on ".length()) + "/health/ready");
      HttpResponse<String> answer =
          HttpClient.newHttpClient()
              .send(HttpRequest.newBuilder(ready).build(), HttpResponse.BodyHandlers.ofString());
      assertEquals(200, answer.statusCode());
      assertEquals("{\"state\":\"up\"}", answer.body());
      process.destroy();
      assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "does not stop");
    } finally {
      process.destroyForcibly();
    }
  }

  @Test
  void serveRefusesToListenElsewhereByOversight() throws Exception {
    Ended elsewhere = run("serve", "--host", "0.0.0.0", "--port", "0");
    assertEquals(2, elsewhere.code());
    assertTrue(elsewhere.err().contains("--without-keys"), elsewhere.err());
    Ended both = run("serve", "--keys", "keys.json", "--without-keys");
    assertEquals(2, both.code());
    Ended missing = run("serve", "--keys", folder.resolve("keys.json").toString());
    assertEquals(2, missing.code());
    assertTrue(missing.err().contains("There is no file of keys"), missing.err());
  }

  @Test
  void keyIsMadeUsedAndRevoked() throws Exception {
    String keys = folder.resolve("keys.json").toString();
    Ended made = run("key", "make", "--keys", keys, "--name", "site");
    String key = made.out().lines().findFirst().orElseThrow().substring("Key: ".length());
    Process process = start("serve", "--host", "0.0.0.0", "--port", "0", "--keys", keys);
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      String port = out.readLine().replaceAll(".*:", "");
      URI methods = URI.create("http://127.0.0.1:" + port + "/v1/methods");
      assertEquals(401, status(methods, "none"));
      assertEquals(200, status(methods, key));
      assertEquals(0, run("key", "revoke", "--keys", keys, key.substring(3, 15)).code());
      assertEquals(401, status(methods, key));
    } finally {
      process.destroyForcibly();
    }
  }

  private static int status(URI uri, String key) throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(uri).header("Authorization", "Bearer " + key).build();
    return HttpClient.newHttpClient()
        .send(request, HttpResponse.BodyHandlers.discarding())
        .statusCode();
  }

  // --- how

  private static void says(Ended ended, String... texts) {
    for (String text : texts) {
      assertTrue(ended.out().contains(text), text + " is missing:\n" + ended.out());
    }
  }

  private static JsonNode example(String name) {
    return Contract.load().example(name);
  }

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  /** Runs the jar to its end; what it says goes to files, so that no pipe fills up. */
  private static Ended run(String... arguments) throws Exception {
    Path out = Files.createTempFile("fillplane", ".out");
    Path err = Files.createTempFile("fillplane", ".err");
    Process process =
        builder(arguments).redirectOutput(out.toFile()).redirectError(err.toFile()).start();
    try {
      assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "does not end");
      return new Ended(process.exitValue(), Files.readString(out), Files.readString(err));
    } finally {
      process.destroyForcibly();
      Files.delete(out);
      Files.delete(err);
    }
  }

  private static Process start(String... arguments) throws IOException {
    return builder(arguments).redirectError(ProcessBuilder.Redirect.DISCARD).start();
  }

  private static ProcessBuilder builder(String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(System.getProperty("java.home") + File.separator + "bin" + File.separator + "java");
    command.addAll(List.of("-Xmx256m", "-jar", System.getProperty("fillplane.jar")));
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command);
  }
}
