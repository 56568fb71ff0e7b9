package dev.fillplane.bench;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.ConnectException;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A service in a process of its own, as small as its options say. */
final class ServiceProcess implements AutoCloseable {

  private static final Path JAR = Path.of("target/fillplane.jar");
  private static final String LISTENING = "Listening on http://127.0.0.1:";
  private static final Pattern COLLECTED = Pattern.compile("(\\d+)M->(\\d+)M\\(");

  private final Process process;
  private final int port;
  private final Path collections;
  private final double listening;
  private final double ready;

  private ServiceProcess(Process process, int port, Path collections, long begun)
      throws IOException {
    this.process = process;
    this.port = port;
    this.collections = collections;
    listening = untilListening(begun);
    BufferedReader out =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    String line = out.readLine();
    if (line == null || !line.startsWith(LISTENING)) {
      throw new IOException("the service does not start: " + line);
    }
    ready = (System.nanoTime() - begun) / 1e6;
  }

  /** The built jar with options for the virtual machine. */
  static ServiceProcess jar(String... options) throws IOException {
    if (!Files.exists(JAR)) {
      throw new IOException("there is no " + JAR.toAbsolutePath() + "; mvn package makes it");
    }
    return start(List.of("-jar", JAR.toString(), "serve", "--port"), options);
  }

  /** A class with a main method that takes a port, from this class path. */
  static ServiceProcess main(String name, String... options) throws IOException {
    return start(List.of("-cp", System.getProperty("java.class.path"), name), options);
  }

  private static ServiceProcess start(List<String> what, String... options) throws IOException {
    Path collections = Files.createTempFile("collections", ".log");
    collections.toFile().deleteOnExit();
    List<String> command = new ArrayList<>();
    command.add(System.getProperty("java.home") + File.separator + "bin" + File.separator + "java");
    command.addAll(List.of(options));
    command.add("-Xlog:gc:file=" + collections);
    command.addAll(what);
    int port = freePort();
    command.add(String.valueOf(port));
    long begun = System.nanoTime();
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    try {
      return new ServiceProcess(process, port, collections, begun);
    } catch (IOException | RuntimeException e) {
      process.destroy();
      throw e;
    }
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0)) {
      return socket.getLocalPort();
    }
  }

  /** Milliseconds until it answers anything at all. */
  private double untilListening(long begun) throws IOException {
    while (process.isAlive()) {
      try (Wire wire = new Wire(port)) {
        wire.send(Wire.get("/health/live"));
        return (System.nanoTime() - begun) / 1e6;
      } catch (ConnectException e) {
        LockSupport.parkNanos(2_000_000);
      }
    }
    throw new IOException("the service ended before it listened");
  }

  double listeningMillis() {
    return listening;
  }

  double readyMillis() {
    return ready;
  }

  int port() {
    return port;
  }

  /** Seconds of processor that it has used. */
  double cpu() {
    return process.info().totalCpuDuration().orElseThrow().toNanos() / 1e9;
  }

  /** Most of the heap, in MB, that a collection found in use before it and left in use after it. */
  int[] heap() {
    int[] most = new int[2];
    try {
      for (String line : Files.readAllLines(collections)) {
        Matcher found = COLLECTED.matcher(line);
        if (found.find()) {
          most[0] = Math.max(most[0], Integer.parseInt(found.group(1)));
          most[1] = Math.max(most[1], Integer.parseInt(found.group(2)));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return most;
  }

  @Override
  public void close() {
    process.destroy();
    try {
      process.waitFor();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
