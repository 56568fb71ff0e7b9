package dev.fillplane.bench;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** The script that does the same work with NumPy and SciPy; see {@code src/test/python}. */
final class Peer implements AutoCloseable {

  private static final String SCRIPT = "src/test/python/peers.py";

  private final Path folder;
  private final Process process;
  private final BufferedWriter asks;
  private final BufferedReader answers;

  Peer(Path folder) throws IOException {
    this.folder = Files.createDirectories(folder);
    process =
        new ProcessBuilder("python3", SCRIPT, folder.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    asks =
        new BufferedWriter(
            new OutputStreamWriter(process.getOutputStream(), StandardCharsets.UTF_8));
    answers =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
  }

  /** Leaves the data of a case: arrays, each after its length. */
  void leave(String name, double[]... arrays) throws IOException {
    int size = Arrays.stream(arrays).mapToInt(array -> 1 + array.length).sum();
    ByteBuffer bytes = ByteBuffer.allocate(size * Double.BYTES).order(ByteOrder.LITTLE_ENDIAN);
    for (double[] array : arrays) {
      bytes.putDouble(array.length);
      Arrays.stream(array).forEach(bytes::putDouble);
    }
    Files.write(folder.resolve(name), bytes.array());
  }

  /** Runs a case some times. */
  Timed run(String name, int times) throws IOException {
    asks.write(name + " " + times + "\n");
    asks.flush();
    String line = answers.readLine();
    if (line == null) {
      throw new IOException("the script ended; does python3 have NumPy and SciPy?");
    }
    double[] told = Arrays.stream(line.split(" ", -1)).mapToDouble(Double::parseDouble).toArray();
    double[] cpu = new double[times];
    double[] clock = new double[times];
    for (int i = 0; i < times; i++) {
      cpu[i] = told[1 + 2 * i];
      clock[i] = told[2 + 2 * i];
    }
    return new Timed(told[0], Stopwatch.middle(cpu), Stopwatch.middle(clock));
  }

  @Override
  public void close() throws IOException {
    asks.close();
  }

  /** What a case came to, and its CPU of the process and time on the clock, ms. */
  record Timed(double answer, double cpu, double clock) {}
}
