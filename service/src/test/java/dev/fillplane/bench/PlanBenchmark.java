package dev.fillplane.bench;

import dev.fillplane.openapi.Contract;
import dev.fillplane.plan.Computed;
import dev.fillplane.plan.Plan;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.plan.Planner;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Json;
import java.io.IOException;
import java.util.List;
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

/** The whole plan of the sample floor. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 8, time = 1000, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 4, time = 1000, timeUnit = TimeUnit.MILLISECONDS)
@Fork(2)
public class PlanBenchmark {

  private static final Computed COMPUTED = new Computed("bench", "bench", List.of());

  private PlanRequest request;

  /** Reads the sample. */
  @Setup
  public void prepare() throws IOException {
    byte[] sample = Json.canonical(Contract.load().example("sample-metric.json"));
    request = Json.read(Json.tree(sample), PlanRequest.class, UnitSystem.METRIC);
  }

  /** The whole plan, without HTTP and JSON. */
  @Benchmark
  public Plan plan() {
    return Planner.plan(request, COMPUTED);
  }
}
