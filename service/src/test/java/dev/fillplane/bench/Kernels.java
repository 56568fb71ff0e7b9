package dev.fillplane.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Runs the kernels with JMH, all or those whose names fit the arguments, and tells what they found
 * as Markdown. Arguments are those of JMH.
 */
public final class Kernels {

  private static final Path FOUND = Path.of("target", "bench.json");

  private Kernels() {}

  /** Takes what JMH takes. */
  public static void main(String[] args) throws IOException {
    Report report = new Report("kernels", "Kernels");
    List<String> all = new ArrayList<>(List.of(args));
    all.addAll(List.of("-prof", CpuProfiler.class.getName(), "-rf", "json"));
    all.addAll(List.of("-rff", FOUND.toString()));
    org.openjdk.jmh.Main.main(all.toArray(String[]::new));
    KernelResults results = KernelResults.read(FOUND);
    report.add(results.tables());
    report.add(KernelGoals.of(results));
  }
}
