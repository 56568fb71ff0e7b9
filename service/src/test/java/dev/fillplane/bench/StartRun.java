package dev.fillplane.bench;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Starts the built jar five times each in several ways, one after the other in turn, and tells how
 * long it takes to listen and to be ready, and the processor time of both. Makes the archive of
 * classes for the last ways itself. One file of its own, so that whoever runs the jar needs no
 * Maven. Run from the root of the project, on a quiet machine: {@code java
 * service/src/test/java/dev/fillplane/bench/StartRun.java}.
 */
public final class StartRun {

  private static final int STARTS = 5;
  private static final String JAR = "service/target/fillplane.jar";
  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private final String base;
  private final Process service;

  /** Milliseconds from the start, and of processors, until it listens and until it is ready. */
  private record Start(double listening, double listeningCpu, double ready, double readyCpu) {}

  private StartRun(List<String> options) throws IOException {
    int port;
    try (ServerSocket socket = new ServerSocket(0)) {
      port = socket.getLocalPort();
    }
    base = "http://127.0.0.1:" + port;
    List<String> command = new ArrayList<>(List.of("java", "-Xmx256m"));
    command.addAll(options);
    command.addAll(List.of("-jar", JAR, "serve", "--port", String.valueOf(port)));
    service =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
  }

  /** Takes no arguments. */
  public static void main(String[] args) throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("fillplane-start");
    String archive = archive(folder);
    Map<String, List<String>> ways = new TreeMap<>();
    ways.put("1 as it is", List.of());
    ways.put("2 metaspace", List.of("-XX:MetaspaceSize=96m"));
    ways.put("3 archive", List.of(archive));
    ways.put("4 archive, metaspace", List.of(archive, "-XX:MetaspaceSize=96m"));
    Map<String, List<Start>> starts = new TreeMap<>();
    for (int i = 0; i < STARTS; i++) {
      for (Map.Entry<String, List<String>> way : ways.entrySet()) {
        starts
            .computeIfAbsent(way.getKey(), unused -> new ArrayList<>())
            .add(start(way.getValue()));
      }
    }
    System.out.println("medians (least-largest), ms");
    starts.forEach(
        (way, all) ->
            System.out.println(
                way
                    + ": listening "
                    + told(all.stream().mapToDouble(Start::listening).sorted().toArray())
                    + ", CPU "
                    + told(all.stream().mapToDouble(Start::listeningCpu).sorted().toArray())
                    + "; ready "
                    + told(all.stream().mapToDouble(Start::ready).sorted().toArray())
                    + ", CPU "
                    + told(all.stream().mapToDouble(Start::readyCpu).sorted().toArray())));
  }

  /** The demo loads what serving loads, and ends by itself. */
  private static String archive(Path folder) throws IOException, InterruptedException {
    Path file = folder.resolve("fillplane.jsa");
    int code =
        new ProcessBuilder(
                "java",
                "-XX:ArchiveClassesAtExit=" + file,
                "-jar",
                JAR,
                "demo",
                "--out",
                folder.resolve("demo").toString())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start()
            .waitFor();
    System.out.printf(Locale.ROOT, "archive: code %d, %d bytes%n", code, Files.size(file));
    return "-XX:SharedArchiveFile=" + file;
  }

  private static Start start(List<String> options) throws IOException, InterruptedException {
    long begin = System.nanoTime();
    StartRun run = new StartRun(options);
    double listening = run.until("/health/live", begin);
    double listeningCpu = run.cpu();
    double ready = run.until("/health/ready", begin);
    Start start = new Start(listening, listeningCpu, ready, run.cpu());
    run.service.destroy();
    run.service.waitFor();
    return start;
  }

  private double until(String path, long begin) throws InterruptedException {
    HttpRequest request = HttpRequest.newBuilder(URI.create(base + path)).build();
    while (true) {
      try {
        if (CLIENT.send(request, BodyHandlers.discarding()).statusCode() == 200) {
          return (System.nanoTime() - begin) / 1e6;
        }
      } catch (IOException e) {
        // It does not listen yet.
      }
      Thread.sleep(5);
    }
  }

  private double cpu() {
    return service.info().totalCpuDuration().orElseThrow().toNanos() / 1e6;
  }

  private static String told(double[] sorted) {
    return String.format(
        Locale.ROOT,
        "%.0f (%.0f-%.0f)",
        sorted[sorted.length / 2],
        sorted[0],
        sorted[sorted.length - 1]);
  }
}
