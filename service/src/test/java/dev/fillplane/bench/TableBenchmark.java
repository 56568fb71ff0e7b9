package dev.fillplane.bench;

import dev.fillplane.plan.PlanRequest;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Json;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The JSON of a table of 1,000,000 rows to the record of its request. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 1500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 4, time = 1000, timeUnit = TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx1500m")
public class TableBenchmark {

  private static final int ROWS = 1_000_000;

  private byte[] body;

  /** Writes the table with readings to 0.01 mm and places to the millimetre. */
  @Setup
  public void prepare() {
    InventedFloor floor = new InventedFloor(40, 25, ROWS);
    StringBuilder text = new StringBuilder(30 * ROWS);
    text.append(
        "{\"units\":\"metric\",\"rooms\":[{\"id\":\"hall\",\"outline\":{\"type\":\"Polygon\",");
    text.append("\"coordinates\":[[[0,0],[40,0],[40,25],[0,25],[0,0]]]}}],");
    text.append("\"survey\":{\"table\":{\"columns\":[\"x\",\"y\",\"reading\"],\"values\":[");
    for (int i = 0; i < ROWS; i++) {
      text.append(i == 0 ? "" : ",").append(decimals(floor.x()[i], 3)).append(',');
      text.append(decimals(floor.y()[i], 3)).append(',');
      text.append(decimals(1000 * floor.reading()[i], 2));
    }
    body = text.append("]}}}").toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String decimals(double value, int places) {
    return String.format(Locale.ROOT, "%." + places + "f", value);
  }

  /** About 20 MB of text. */
  @Benchmark
  public PlanRequest read() throws IOException {
    return Json.read(Json.tree(body), PlanRequest.class, UnitSystem.METRIC);
  }
}
