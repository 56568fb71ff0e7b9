package dev.fillplane.bench;

import dev.fillplane.plan.DepthFieldAnswer;
import java.util.ArrayList;
import java.util.List;
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
import org.tinfour.common.IIncrementalTin;
import org.tinfour.common.Vertex;
import org.tinfour.interpolation.NaturalNeighborInterpolator;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.HilbertSort;

/**
 * Many readings by table to a whole depth field, beside what the triangulation and interpolation
 * cost by themselves at the same places and cells.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2000, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 3, time = 1500, timeUnit = TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx1500m")
public class DenseFieldBenchmark {

  /** Readings of the survey. */
  @Param({"10000", "100000", "1000000"})
  public int readings;

  private DenseCase hall;

  /** Invents the readings and finds the nodes that a depth field has. */
  @Setup
  public void prepare() {
    hall = new DenseCase(readings);
  }

  /** From a table with a column of readings. */
  @Benchmark
  public DepthFieldAnswer readings() {
    return hall.readings();
  }

  /** From a table with a column of elevations. */
  @Benchmark
  public DepthFieldAnswer elevations() {
    return hall.elevations();
  }

  /** Vertices in Hilbert order, triangles, natural neighbours at each node: nothing else. */
  @Benchmark
  public double bareTinfour() {
    InventedFloor floor = hall.floor();
    List<Vertex> vertices = new ArrayList<>(readings);
    for (int i = 0; i < readings; i++) {
      vertices.add(new Vertex(floor.x()[i], floor.y()[i], floor.reading()[i], i));
    }
    new HilbertSort().sort(vertices);
    IIncrementalTin tin = new IncrementalTin(Math.sqrt(40 * 25.0 / readings));
    tin.add(vertices, null);
    NaturalNeighborInterpolator interpolator = new NaturalNeighborInterpolator(tin);
    double[] nodes = hall.nodes();
    int count = nodes.length / 2;
    double sum = 0;
    for (int i = 0; i < count; i++) {
      double height = interpolator.interpolate(nodes[i], nodes[count + i], null);
      sum += Double.isNaN(height) ? 0 : height;
    }
    return sum;
  }
}
