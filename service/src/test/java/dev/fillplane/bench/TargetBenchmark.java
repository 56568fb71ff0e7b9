package dev.fillplane.bench;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.room.Room;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.Spots;
import dev.fillplane.surface.TestFloors;
import dev.fillplane.target.FoundTarget;
import dev.fillplane.target.GrindWish;
import dev.fillplane.target.HighPoints;
import dev.fillplane.target.TargetFinder;
import dev.fillplane.target.TargetShape;
import dev.fillplane.target.TargetWish;
import java.util.List;
import java.util.Optional;
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

/** The target over an invented floor of 60 m2 in 6,000 cells; the goal with grinding is 2 ms. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 400, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 4, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Fork(2)
public class TargetBenchmark {

  /** Shape of the target, and whether the floor may be ground. */
  @Param({"LEVEL false", "LEVEL true", "PLANE false", "PLANE true"})
  public String wanted;

  private HighPoints highs;
  private TargetWish wish;

  /** Invents the floor and the wish. */
  @Setup
  public void prepare() {
    double[] ring = TestFloors.moved(new double[] {0, 0, 10, 0, 10, 6, 0, 6}, 0.1, 3, 2);
    Room room = TestFloors.room("hall", ring);
    FloorSample floor =
        TestFloors.sample((x, y) -> TestFloors.waves(x, y) + 0.001 * x - 0.0005 * y, 0.1, room);
    double[] none = new double[0];
    highs = HighPoints.of(floor, new Spots(none, none, none, none), List.of());
    String[] words = wanted.split(" ", -1);
    OptionalDouble open = OptionalDouble.empty();
    GrindWish grind = new GrindWish(Boolean.valueOf(words[1]), null, null);
    TargetShape shape = TargetShape.valueOf(words[0]);
    wish =
        new TargetWish(
            shape, open, null, null, open, null, null, grind, Optional.empty(), null, null);
  }

  /** From the sampled floor to its plane. */
  @Benchmark
  public FoundTarget find() {
    return TargetFinder.find(
        wish, 0.003, highs, OptionalDouble.empty(), Place.root(), new Findings());
  }
}
