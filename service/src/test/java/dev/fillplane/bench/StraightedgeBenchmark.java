package dev.fillplane.bench;

import dev.fillplane.flatness.EdgeWalk;
import dev.fillplane.flatness.Gap;
import dev.fillplane.flatness.GapLimit;
import dev.fillplane.flatness.GrindAndPatch;
import dev.fillplane.flatness.Straightedge;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.KrigedSurface;
import dev.fillplane.surface.Spots;
import dev.fillplane.surface.SurfaceWish;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Polygon;
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

/** A 3 m edge on a floor of 60 m2, 6,000 cells, in 16 directions; and what is to be corrected. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 400, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 4, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Fork(2)
public class StraightedgeBenchmark {

  private static final double CELL = 0.1;
  private static final double EDGE = 3;
  private static final GapLimit LIMIT = new GapLimit(EDGE, 0.003, 1);

  private List<Polygon> rooms;
  private FloorSample sample;

  /** Lays a floor of 60 readings on cells. */
  @Setup
  public void prepare() {
    InventedFloor floor = new InventedFloor(10, 6, 60);
    rooms = floor.polygons();
    double[] elevation = Arrays.stream(floor.reading()).map(reading -> -reading).toArray();
    double[] variance = new double[elevation.length];
    Arrays.fill(variance, 1e-6);
    Spots spots = new Spots(floor.x(), floor.y(), elevation, variance);
    KrigedSurface surface = KrigedSurface.fit(spots, SurfaceWish.usual());
    sample = FloorSample.of(List.of(floor.room()), surface, CELL);
  }

  /** The largest gap of waves that are reckoned at each place. */
  @Benchmark
  public double waves() {
    return new EdgeCase().largestGap();
  }

  /** The largest gap of the floor between the readings. */
  @Benchmark
  public Optional<Gap> floor() {
    return Straightedge.largestGap(rooms, sample::elevation, EDGE);
  }

  /** The same with all gaps over a limit listed. */
  @Benchmark
  public EdgeWalk listed() {
    return Straightedge.walk(rooms, sample::elevation, LIMIT, 0.001);
  }

  /** Humps and hollows with their outlines. */
  @Benchmark
  public GrindAndPatch corrections() {
    return GrindAndPatch.of(rooms, sample::elevation, LIMIT.gap());
  }
}
