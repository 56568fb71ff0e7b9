package dev.fillplane.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Mean and standard deviation on 10,000 cells by a given covariance, with its factorisation. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 400, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 4, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Fork(2)
public class KrigingBenchmark {

  /** Readings of the survey. */
  @Param({"60", "200"})
  public int readings;

  private KrigingCase floor;

  /** Invents the readings. */
  @Setup
  public void prepare() {
    floor = new KrigingCase(readings);
  }

  /** The whole. */
  @Benchmark
  public double[][] meanAndDeviation() {
    return floor.meanAndDeviation();
  }
}
