package dev.fillplane.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/**
 * CPU time of the whole process for each operation, in milliseconds: with the collection of garbage
 * and whatever is still compiled, which the time of the benchmark's own thread leaves out.
 */
public final class CpuProfiler implements InternalProfiler {

  private long before;

  @Override
  public String getDescription() {
    return "CPU time of the process";
  }

  @Override
  public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
    before = cpu();
  }

  @Override
  public Collection<? extends Result<?>> afterIteration(
      BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
    double used = (cpu() - before) / 1e6 / result.getMetadata().getAllOps();
    return List.of(new ScalarResult("cpu", used, "ms/op", AggregationPolicy.AVG));
  }

  private static long cpu() {
    return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
  }
}
