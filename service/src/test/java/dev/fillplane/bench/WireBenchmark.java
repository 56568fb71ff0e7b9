package dev.fillplane.bench;

import com.fasterxml.jackson.databind.JsonNode;
import dev.fillplane.openapi.Contract;
import dev.fillplane.plan.Computed;
import dev.fillplane.plan.Plan;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.plan.Planner;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.render.DepthMap;
import dev.fillplane.supply.BagCount;
import dev.fillplane.supply.BagCountRequest;
import dev.fillplane.supply.BagCounter;
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

/** What stands between the wire and the computation, for the sample floor and for a bag count. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 4, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Fork(2)
public class WireBenchmark {

  private byte[] sample;
  private JsonNode tree;
  private PlanRequest request;
  private Plan plan;
  private BagCountRequest bags;

  /** Plans the sample once. */
  @Setup
  public void prepare() throws IOException {
    sample = Json.canonical(Contract.load().example("sample-metric.json"));
    tree = parse();
    request = bind();
    plan = Planner.plan(request, new Computed("bench", "bench", List.of()));
    bags =
        Json.read(
            Contract.load().example("bag-count.json"), BagCountRequest.class, UnitSystem.METRIC);
  }

  /** The text of a request of 60 readings to a tree. */
  @Benchmark
  public JsonNode parse() throws IOException {
    return Json.tree(sample);
  }

  /** The tree to its record. */
  @Benchmark
  public PlanRequest bind() throws IOException {
    return Json.read(tree, PlanRequest.class, UnitSystem.METRIC);
  }

  /** The answer to its text. */
  @Benchmark
  public byte[] write() {
    return Json.bytes(plan, UnitSystem.METRIC);
  }

  /** The picture as SVG. */
  @Benchmark
  public String depthMap() {
    return DepthMap.draw(request, plan);
  }

  /** A bag count, from record to record. */
  @Benchmark
  public BagCount bags() {
    return BagCounter.count(bags);
  }
}
