package dev.fillplane.app;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Keeps the built jar busy with plans, pictures, sheets, streams (every other one left by its
 * caller), jobs and nonsense, and looks every half minute, at rest and after a full collection,
 * whether its heap, threads and open files stay where they were. Run from the root of the project;
 * the number is of minutes, 10 unless told:
 *
 * <pre>java service/src/test/java/dev/fillplane/app/Soak.java 10
 * </pre>
 *
 * Ends with 0 where they stay, with 1 where one grows.
 */
public final class Soak {

  private static final String JAR = "service/target/fillplane.jar";
  private static final Path EXAMPLES = Path.of("openapi", "examples");
  private static final int CALLERS = 4;
  private static final int LOOK_SECONDS = 30;
  private static final long MB = 1_000_000;

  /**
   * How much more the last third may show than the one before: caches that fill, a job that ends.
   */
  private static final double HEAP_MB = 8;

  private static final double THREADS = 4;
  private static final double FILES = 8;

  private final HttpClient client = HttpClient.newHttpClient();
  private final AtomicLong answers = new AtomicLong();
  private final AtomicLong odd = new AtomicLong();
  private final String base;
  private final String admin;
  private final Process service;
  private final String plan;
  private final String unit;

  /** Heap after a full collection in MB, threads, open files. */
  private record Look(double heap, double threads, double files) {}

  private Soak(Path data) throws IOException {
    base = "http://127.0.0.1:" + freePort();
    admin = "http://127.0.0.1:" + freePort();
    plan = Files.readString(EXAMPLES.resolve("sample-metric.json"));
    unit = Files.readString(EXAMPLES.resolve("rectangle.json")).replaceAll("\\s*\\R\\s*", " ");
    List<String> command = List.of("java", "-Xmx256m", "-jar", JAR, "serve", "--port", port(base));
    List<String> all = new ArrayList<>(command);
    all.addAll(List.of("--admin-port", port(admin), "--data", data.toString()));
    service =
        new ProcessBuilder(all)
            .redirectErrorStream(true)
            .redirectOutput(data.resolve("log").toFile())
            .start();
  }

  /** Minutes may be told. */
  public static void main(String[] arguments) throws Exception {
    long minutes = arguments.length > 0 ? Long.parseLong(arguments[0]) : 10;
    Path data = Files.createTempDirectory("fillplane-soak");
    Soak soak = new Soak(data);
    try {
      soak.untilReady();
      System.exit(soak.run(System.nanoTime() + TimeUnit.MINUTES.toNanos(minutes)) ? 0 : 1);
    } finally {
      soak.service.destroy();
      soak.service.waitFor();
    }
  }

  private boolean run(long end) throws Exception {
    List<Look> looks = new ArrayList<>();
    while (looks.size() < 3 || System.nanoTime() < end) {
      busy(System.nanoTime() + TimeUnit.SECONDS.toNanos(LOOK_SECONDS));
      looks.add(look());
    }
    int third = Math.max(1, looks.size() / 3);
    Look before = median(looks.subList(looks.size() - 2 * third, looks.size() - third));
    Look after = median(looks.subList(looks.size() - third, looks.size()));
    boolean flat =
        after.heap() - before.heap() <= HEAP_MB
            && after.threads() - before.threads() <= THREADS
            && after.files() - before.files() <= FILES;
    print("%d answers, %d of them none that was expected%n", answers.get(), odd.get());
    print("%s%n", flat && odd.get() == 0 ? "flat" : "NOT FLAT");
    return flat && odd.get() == 0;
  }

  /** The middle of the looks, each number for itself. */
  private static Look median(List<Look> looks) {
    return new Look(
        looks.stream().mapToDouble(Look::heap).sorted().toArray()[looks.size() / 2],
        looks.stream().mapToDouble(Look::threads).sorted().toArray()[looks.size() / 2],
        looks.stream().mapToDouble(Look::files).sorted().toArray()[looks.size() / 2]);
  }

  private void busy(long end) throws Exception {
    ExecutorService callers = Executors.newFixedThreadPool(CALLERS);
    for (int caller = 0; caller < CALLERS; caller++) {
      int first = caller;
      callers.execute(() -> calls(first, end));
    }
    callers.shutdown();
    if (!callers.awaitTermination(10, TimeUnit.MINUTES)) {
      odd.incrementAndGet();
      print("callers did not come to their end%n");
    }
  }

  private void calls(int first, long end) {
    try {
      for (int i = first; System.nanoTime() < end; i++) {
        call(i);
      }
    } catch (Exception e) {
      odd.incrementAndGet();
      print("%s%n", e);
    }
  }

  private void call(int i) throws Exception {
    switch (i % 8) {
      case 0 -> expect(200, post("/v1/plans", "application/json", plan));
      case 1 -> expect(200, post("/v1/depth-maps", "application/json", plan));
      case 2 -> expect(200, post("/v1/pour-sheets", "application/json", plan));
      case 3 -> expect(422, post("/v1/plans", "application/json", "{\"odd\": " + i + "}"));
      case 4 -> expect(404, get("/odd/" + i));
      case 5 -> expect(200, post("/v1/plan-streams", "application/x-ndjson", units(10)));
      case 6 -> leave();
      default -> job();
    }
  }

  private String units(int count) {
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < count; i++) {
      lines.append(unit.replaceFirst("\"reference\": \"", "$0flat " + i + ", ")).append('\n');
    }
    return lines.toString();
  }

  /** A caller who is gone before its stream has ended. */
  private void leave() throws Exception {
    HttpRequest request = request("/v1/plan-streams", "application/x-ndjson", units(50));
    client.send(request, BodyHandlers.ofInputStream()).body().close();
    answers.incrementAndGet();
  }

  private void job() throws Exception {
    HttpResponse<String> taken = post("/v1/job-uploads", "application/x-ndjson", units(10));
    expect(202, taken);
    if (taken.statusCode() != 202) {
      return;
    }
    String path = taken.headers().firstValue("Location").orElseThrow();
    String state = get(path).body();
    while (!state.contains("\"endedAt\"")) {
      Thread.sleep(50);
      state = get(path).body();
    }
    if (!state.contains("\"state\":\"finished\"")) {
      odd.incrementAndGet();
      print("a job ended otherwise: %s%n", state);
    }
    expect(200, get(path + "/order"));
    expect(204, send(HttpRequest.newBuilder(URI.create(base + path)).DELETE()));
  }

  /** A full service asks to come again, which is no fault. */
  private void expect(int status, HttpResponse<String> answer) {
    answers.incrementAndGet();
    if (answer.statusCode() != status && answer.statusCode() != 503 && odd.incrementAndGet() < 10) {
      print("%d for %s%n", answer.statusCode(), answer.request().uri().getPath());
    }
  }

  private Look look() throws Exception {
    Thread.sleep(2_000);
    new ProcessBuilder("jcmd", String.valueOf(service.pid()), "GC.run").start().waitFor();
    String numbers = send(HttpRequest.newBuilder(URI.create(admin + "/metrics"))).body();
    Look look =
        new Look(
            sum(numbers, "jvm_memory_used_bytes{area=\"heap\"") / MB,
            sum(numbers, "jvm_threads_live_threads"),
            sum(numbers, "process_files_open_files"));
    print(
        "%7d answers: heap %.1f MB, %.0f threads, %.0f open files%n",
        answers.get(), look.heap(), look.threads(), look.files());
    return look;
  }

  private static double sum(String numbers, String name) {
    return numbers
        .lines()
        .filter(line -> line.startsWith(name))
        .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1)))
        .sum();
  }

  private void untilReady() throws Exception {
    while (true) {
      try {
        if (get("/health/ready").statusCode() == 200) {
          return;
        }
      } catch (IOException e) {
        // It does not listen yet.
      }
      Thread.sleep(100);
    }
  }

  private HttpResponse<String> post(String path, String type, String body) throws Exception {
    return client.send(request(path, type, body), BodyHandlers.ofString());
  }

  private HttpRequest request(String path, String type, String body) {
    return HttpRequest.newBuilder(URI.create(base + path))
        .header("Content-Type", type)
        .POST(BodyPublishers.ofString(body))
        .build();
  }

  private HttpResponse<String> get(String path) throws Exception {
    return send(HttpRequest.newBuilder(URI.create(base + path)));
  }

  private HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
    return client.send(request.build(), BodyHandlers.ofString());
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0)) {
      return socket.getLocalPort();
    }
  }

  private static String port(String address) {
    return address.substring(address.lastIndexOf(':') + 1);
  }

  private static void print(String format, Object... values) {
    System.out.printf(Locale.ROOT, format, values);
  }
}
