package dev.fillplane.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.openapi.Contract;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.locks.LockSupport;
import java.util.function.IntPredicate;

/** The built jar, serving as a process of its own in 256 MB of heap. */
final class JarService implements AutoCloseable {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final HttpClient HTTP = HttpClient.newHttpClient();
  private static final JsonNode UNIT = Contract.load().example("rectangle.json");

  private final Process process;
  private final String address;

  private JarService(Process process, String address) {
    this.process = process;
    this.address = address;
  }

  /** Starts one with jobs in a folder. */
  static JarService on(Path data) throws IOException {
    return start(Map.of(), "--data", data.toString());
  }

  /** The same with variables of its own. */
  static JarService on(Path data, Map<String, String> environment) throws IOException {
    return start(environment, "--data", data.toString());
  }

  /** Starts one with jobs in a database. */
  static JarService on(String database) throws IOException {
    return start(Map.of("FILLPLANE_DATABASE_URL", database));
  }

  /** Starts one with jobs in a database, on one processor only. */
  static JarService pinned(int core, String database) throws IOException {
    return start(
        List.of("taskset", "-c", Integer.toString(core)),
        Map.of("FILLPLANE_DATABASE_URL", database));
  }

  private static JarService start(Map<String, String> environment, String... arguments)
      throws IOException {
    return start(List.of(), environment, arguments);
  }

  private static JarService start(
      List<String> before, Map<String, String> environment, String... arguments)
      throws IOException {
    List<String> command = new ArrayList<>(before);
    command.add(System.getProperty("java.home") + File.separator + "bin" + File.separator + "java");
    command.addAll(List.of("-Xmx256m", "-jar", System.getProperty("fillplane.jar")));
    command.addAll(List.of("serve", "--port", "0"));
    command.addAll(List.of(arguments));
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD);
    builder.environment().putAll(environment);
    Process process = builder.start();
    BufferedReader out =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    String line = out.readLine();
    assertTrue(line != null && line.startsWith("Listening on "), "does not start: " + line);
    return new JarService(process, line.substring("Listening on ".length()));
  }

  /** Invented flats, one a line. */
  static String units(int count) {
    return units(UNIT, count);
  }

  /** Larger ones: the sample floor of two rooms and a passage. */
  static String samples(int count) {
    return units(Contract.load().example("sample-metric.json"), count);
  }

  private static String units(JsonNode unit, int count) {
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < count; i++) {
      lines.append(numbered(unit, i)).append('\n');
    }
    return lines.toString();
  }

  static String unit(int number) {
    return numbered(UNIT, number);
  }

  private static String numbered(JsonNode unit, int number) {
    ObjectNode copy = unit.deepCopy();
    return copy.put("reference", "flat " + number).put("seed", number + 1).toString();
  }

  /** Uploads lines of units; the path of the job. */
  String upload(String lines) throws Exception {
    HttpResponse<String> answer = post("/v1/job-uploads", "application/x-ndjson", lines);
    assertEquals(202, answer.statusCode(), answer.body());
    return answer.headers().firstValue("Location").orElseThrow();
  }

  HttpResponse<String> post(String path, String type, String body) throws Exception {
    return send(
        HttpRequest.newBuilder(URI.create(address + path))
            .header("Content-Type", type)
            .POST(BodyPublishers.ofString(body)));
  }

  /** The same, not waiting for the answer. */
  CompletableFuture<HttpResponse<String>> postLater(String path, String type, String body) {
    return HTTP.sendAsync(
        HttpRequest.newBuilder(URI.create(address + path))
            .header("Content-Type", type)
            .POST(BodyPublishers.ofString(body))
            .build(),
        HttpResponse.BodyHandlers.ofString());
  }

  /** Asks it to end, as SIGTERM does. */
  void terminate() {
    process.destroy();
  }

  /** Waits for its end. */
  int exitCode() throws InterruptedException {
    return process.waitFor();
  }

  HttpResponse<String> get(String path) throws Exception {
    return send(HttpRequest.newBuilder(URI.create(address + path)));
  }

  private static HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
    return HTTP.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  /** Waits until the number of units done is as wanted, through times without an answer. */
  void untilDone(String job, IntPredicate wanted) throws Exception {
    while (true) {
      HttpResponse<String> answer = get(job);
      if (answer.statusCode() == 200
          && wanted.test(JSON.readTree(answer.body()).get("done").intValue())) {
        return;
      }
      assertTrue(List.of(200, 503).contains(answer.statusCode()), answer.body());
      LockSupport.parkNanos(100_000_000);
    }
  }

  /** Every unit stands once among the results, in its place, with the plan of the unit alone. */
  void everyUnitOnce(String job, int count) throws Exception {
    JsonNode status = JSON.readTree(get(job).body());
    assertEquals("finished", status.get("state").textValue());
    assertEquals(0, status.get("failed").intValue());
    int unit = 0;
    String page = job + "/plans?limit=50";
    while (page != null) {
      String body = get(page).body();
      JsonNode tree = JSON.readTree(body);
      for (JsonNode item : tree.get("items")) {
        assertEquals(unit, item.get("unit").intValue());
        assertEquals("flat " + unit, item.at("/plan/reference").textValue());
        if (unit % 20 == 0) {
          String alone = post("/v1/plans", "application/json", unit(unit)).body();
          assertTrue(body.contains("\"plan\":" + alone + "}"), "unit " + unit);
        }
        unit++;
      }
      page =
          tree.has("nextCursor")
              ? job + "/plans?limit=50&cursor=" + tree.get("nextCursor").textValue()
              : null;
    }
    assertEquals(count, unit);
  }

  /** As {@code kill -9} does. */
  void kill() throws InterruptedException {
    process.destroyForcibly();
    process.waitFor();
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
