package dev.fillplane.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/** What JMH found: by class and kernel, time and CPU in milliseconds over all iterations. */
final class KernelResults {

  /** A kernel with its parameters. */
  private record Found(String kernel, double[] time, double cpu) {}

  private final Map<String, Map<String, Found>> byClass = new LinkedHashMap<>();

  private KernelResults() {}

  static KernelResults read(Path file) throws IOException {
    KernelResults results = new KernelResults();
    for (JsonNode one : new ObjectMapper().readTree(file.toFile())) {
      String[] names = one.get("benchmark").asText().split("\\.", -1);
      StringBuilder kernel = new StringBuilder(names[names.length - 1]);
      for (JsonNode value : one.path("params")) {
        kernel.append(" ").append(value.asText());
      }
      double unit = one.at("/primaryMetric/scoreUnit").asText().startsWith("us") ? 1e-3 : 1;
      double cpu = one.at("/secondaryMetrics/cpu/score").asDouble();
      results
          .byClass
          .computeIfAbsent(names[names.length - 2], unused -> new LinkedHashMap<>())
          .put(
              kernel.toString(),
              new Found(kernel.toString(), times(one.at("/primaryMetric/rawData"), unit), cpu));
    }
    return results;
  }

  private static double[] times(JsonNode forks, double unit) {
    double[] times = new double[forks.size() * forks.get(0).size()];
    int count = 0;
    for (JsonNode fork : forks) {
      for (JsonNode iteration : fork) {
        times[count++] = unit * iteration.asDouble();
      }
    }
    return times;
  }

  /** A table for each class. */
  String tables() {
    StringBuilder text = new StringBuilder();
    byClass.forEach(
        (name, kernels) -> {
          Table table = Table.of(name, "time, ms (least, most)", "CPU, ms");
          for (Found found : kernels.values()) {
            table.row("`" + found.kernel() + "`", Stopwatch.told(found.time()), found.cpu());
          }
          text.append(table).append('\n');
        });
    return text.toString();
  }

  /** Median time of a kernel; empty if it was not run. */
  OptionalDouble time(String type, String kernel) {
    Found found = byClass.getOrDefault(type, Map.of()).get(kernel);
    return found == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(Stopwatch.middle(found.time()));
  }

  /** CPU of a kernel; empty if it was not run. */
  OptionalDouble cpu(String type, String kernel) {
    Found found = byClass.getOrDefault(type, Map.of()).get(kernel);
    return found == null ? OptionalDouble.empty() : OptionalDouble.of(found.cpu());
  }
}
