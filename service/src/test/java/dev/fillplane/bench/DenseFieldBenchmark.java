package dev.fillplane.bench;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.plan.DepthFieldAnswer;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.plan.Planner;
import dev.fillplane.surface.CellSize;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.survey.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
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
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 5)
@Fork(value = 1, jvmArgs = "-Xmx1500m")
public class DenseFieldBenchmark {

  /** Readings of the survey. */
  @Param({"100000", "1000000"})
  public int readings;

  private InventedFloor floor;
  private PlanRequest ofReadings;
  private PlanRequest ofElevations;
  private double[] nodeX;
  private double[] nodeY;

  /** Invents the readings and finds the nodes that a depth field has. */
  @Setup
  public void prepare() {
    floor = new InventedFloor(40, 25, readings);
    ofReadings = floor.request(floor.table(Column.READING));
    ofElevations = floor.request(floor.table(Column.ELEVATION));
    double cell =
        CellSize.choose(
            List.of(floor.room()), OptionalDouble.empty(), Place.root(), new Findings());
    FloorSample cells = FloorSample.of(List.of(floor.room()), new Level(), cell);
    int nodes = (cells.columns() + 1) * (cells.rows() + 1) + cells.columns() * cells.rows();
    nodeX = new double[nodes];
    nodeY = new double[nodes];
    for (int node = 0; node < nodes; node++) {
      nodeX[node] = cells.nodeX(node);
      nodeY[node] = cells.nodeY(node);
    }
  }

  /** From a table with a column of readings. */
  @Benchmark
  public DepthFieldAnswer readings() {
    return Planner.depthField(ofReadings);
  }

  /** From a table with a column of elevations. */
  @Benchmark
  public DepthFieldAnswer elevations() {
    return Planner.depthField(ofElevations);
  }

  /** Vertices in Hilbert order, triangles, natural neighbours at each node: nothing else. */
  @Benchmark
  public double bareTinfour() {
    List<Vertex> vertices = new ArrayList<>(readings);
    for (int i = 0; i < readings; i++) {
      vertices.add(new Vertex(floor.x()[i], floor.y()[i], floor.reading()[i], i));
    }
    new HilbertSort().sort(vertices);
    IIncrementalTin tin = new IncrementalTin(Math.sqrt(40 * 25.0 / readings));
    tin.add(vertices, null);
    NaturalNeighborInterpolator interpolator = new NaturalNeighborInterpolator(tin);
    double sum = 0;
    for (int i = 0; i < nodeX.length; i++) {
      double height = interpolator.interpolate(nodeX[i], nodeY[i], null);
      sum += Double.isNaN(height) ? 0 : height;
    }
    return sum;
  }
}
