package dev.fillplane.bench;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/**
 * Starts the built jar five times and tells how long it takes to listen and to be ready; then plans
 * the sample floor over HTTP, one caller, one request after the other. Run from the root of the
 * project: {@code java service/src/test/java/dev/fillplane/bench/ServiceRun.java}.
 */
public final class ServiceRun {

  private static final int STARTS = 5;
  private static final int WARM_UP = 300;
  private static final int CALLS = 200;
  private static final String JAR = "service/target/fillplane.jar";
  private static final Path SAMPLE = Path.of("openapi/examples/sample-metric.json");

  private final HttpClient client = HttpClient.newHttpClient();
  private final String base;
  private final Process service;

  private ServiceRun() throws IOException {
    int port;
    try (ServerSocket socket = new ServerSocket(0)) {
      port = socket.getLocalPort();
    }
    base = "http://127.0.0.1:" + port;
    ProcessBuilder start =
        new ProcessBuilder(
            "java", "-Xmx256m", "-jar", JAR, "serve", "--port", String.valueOf(port));
    start.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
    service = start.start();
  }

  /** Takes no arguments. */
  public static void main(String[] args) throws IOException, InterruptedException {
    for (int i = 0; i < STARTS; i++) {
      long begin = System.nanoTime();
      ServiceRun run = new ServiceRun();
      double listening = run.until("/health/live", begin);
      double ready = run.until("/health/ready", begin);
      print("start %d: listening %.0f ms, ready %.0f ms%n", i + 1, listening, ready);
      if (i == STARTS - 1) {
        run.plans();
      }
      run.service.destroy();
      run.service.waitFor();
    }
  }

  /** Milliseconds from {@code begin} until a path answers 200. */
  private double until(String path, long begin) throws InterruptedException {
    HttpRequest request = HttpRequest.newBuilder(URI.create(base + path)).build();
    while (true) {
      try {
        if (client.send(request, BodyHandlers.discarding()).statusCode() == 200) {
          return (System.nanoTime() - begin) / 1e6;
        }
      } catch (IOException e) {
        // It does not listen yet.
      }
      Thread.sleep(5);
    }
  }

  private void plans() throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(base + "/v1/plans"))
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofFile(SAMPLE))
            .build();
    double[] took = new double[WARM_UP + CALLS];
    long cpu = 0;
    for (int i = 0; i < took.length; i++) {
      cpu = i == WARM_UP ? cpu() : cpu;
      long begin = System.nanoTime();
      int status = client.send(request, BodyHandlers.ofByteArray()).statusCode();
      took[i] = (System.nanoTime() - begin) / 1e6;
      if (status != 200) {
        throw new IOException("status " + status);
      }
    }
    double perCall = (cpu() - cpu) / 1e6 / CALLS;
    print("first plan %.1f ms%n", took[0]);
    double[] warm = Arrays.copyOfRange(took, WARM_UP, took.length);
    Arrays.sort(warm);
    print("plans after %d: p10 %.2f ms, ", WARM_UP, warm[CALLS / 10]);
    print("p50 %.2f ms, p90 %.2f ms, ", warm[CALLS / 2], warm[CALLS * 9 / 10]);
    print("CPU of the service %.2f ms a plan%n", perCall);
  }

  private long cpu() {
    return service.info().totalCpuDuration().orElseThrow().toNanos();
  }

  private static void print(String format, Object... values) {
    System.out.printf(Locale.ROOT, format, values);
  }
}
