package dev.fillplane.bench;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Times several works in turns, so that all meet the same state of the machine and of the compiler.
 * Times are CPU of the calling thread, in milliseconds: without the collection of garbage.
 */
public final class Stopwatch {

  private static final String MEASURE = "measure";

  /** Longer than the clock of a thread is coarse. */
  private static final double LEAST_MILLIS = 20;

  private final Map<String, Supplier<?>> works;
  private final Map<String, double[]> times = new LinkedHashMap<>();
  private volatile Object kept;

  /** For works by name. */
  public Stopwatch(Map<String, Supplier<?>> works) {
    this.works = works;
  }

  /** Warms up with the first work, then takes turns. */
  public Stopwatch run(int warmUp, int rounds) {
    Supplier<?> first = works.values().iterator().next();
    for (int i = 0; i < warmUp; i++) {
      kept = first.get();
    }
    works.keySet().forEach(name -> times.put(name, new double[rounds]));
    for (int round = -2; round < rounds; round++) {
      for (Map.Entry<String, Supplier<?>> work : works.entrySet()) {
        double took = time(work.getValue());
        if (round >= 0) {
          times.get(work.getKey())[round] = took;
        }
      }
    }
    return this;
  }

  private double time(Supplier<?> work) {
    double begun = cpu();
    int count = 0;
    double took;
    do {
      kept = work.get();
      count++;
      took = cpu() - begun;
    } while (took < LEAST_MILLIS);
    return took / count;
  }

  private static double cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e6;
  }

  /** Prints a line for each work: its name and the median. */
  public void print() {
    times.forEach((name, all) -> System.out.println("=" + name + "=" + middle(all)));
  }

  /** Whether a main class is asked to measure, and not to start processes that do. */
  public static boolean isProcess(String[] args) {
    return args.length > 0 && args[0].equals(MEASURE);
  }

  /** What a main class prints in a process of its own. */
  public static Map<String, double[]> inProcess(String main)
      throws IOException, InterruptedException {
    String java =
        System.getProperty("java.home") + File.separator + "bin" + File.separator + "java";
    Process process =
        new ProcessBuilder(java, "-cp", System.getProperty("java.class.path"), main, MEASURE)
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    Map<String, double[]> found = new LinkedHashMap<>();
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        String[] parts = line.split("=", -1);
        if (parts.length == 3 && parts[0].isEmpty()) {
          found.put(parts[1], new double[] {Double.parseDouble(parts[2])});
        }
      }
    }
    if (process.waitFor() != 0 || found.isEmpty()) {
      throw new IOException(main + " ended without a result");
    }
    return found;
  }

  /** The median over processes. */
  public static double middle(List<Map<String, double[]>> runs, String name) {
    return middle(values(runs, name));
  }

  /** Median, least and most over processes. */
  public static String told(List<Map<String, double[]>> runs, String name) {
    return told(values(runs, name));
  }

  /** Median, least and most. */
  public static String told(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return "%s (%s, %s)"
        .formatted(
            Table.figures(middle(values)),
            Table.figures(sorted[0]),
            Table.figures(sorted[sorted.length - 1]));
  }

  /** The median. */
  public static double middle(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private static double[] values(List<Map<String, double[]>> runs, String name) {
    return runs.stream().mapToDouble(run -> run.get(name)[0]).toArray();
  }
}
