package dev.fillplane.pour;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.TestRooms;
import dev.fillplane.bay.TiltedDepths;
import dev.fillplane.depth.DepthField;
import dev.fillplane.material.DataSheet;
import dev.fillplane.room.Room;
import dev.fillplane.surface.TestFloors;
import dev.fillplane.target.Plane;
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

/** One run of 500 batches, and the whole pour of a floor of 60 m2 with its search. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 400, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 4, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Fork(2)
public class CrewBenchmark {

  private static final DataSheet SHEET = TestSheets.usual();
  private static final Crew CREW = Crew.of(4, 2, 4, 1);

  private LaidFloor floor;
  private TaskTimes times;
  private BayPlan unit;
  private Room room;
  private DepthField field;

  /** Lays 500 batches, and a room of 10 m by 6 m at 9 mm: 36 bags. */
  @Setup
  public void prepare() {
    floor = EvenFloors.floor(500, 2, 1);
    times = TaskTimes.of(CREW, SHEET);
    room = TestRooms.room("unit", TestRooms.rectangle(0, 0, 10, 6), TestRooms.exit(10, 1, 10, 2));
    unit = BayPlan.of(List.of(room), TiltedDepths.even(0.009), TestRooms.BUCKETS);
    field = DepthField.of(TestFloors.sample(TestFloors::waves, 0.1, room), Plane.level(0.009));
  }

  /** Four people, two mixers. */
  @Benchmark
  public double run500Batches() {
    return CrewRun.of(floor, times, new Way(4, 2, 4, 0), CREW).end();
  }

  /** The usual crew on a day on which nothing holds, so that every change is tried. */
  @Benchmark
  public Pour wholePour() {
    return PourPlanner.plan(unit, SHEET, Crew.usual(), Healing.of(200), List.of());
  }

  /** A large crew. */
  @Benchmark
  public Pour wholePourOfManyPeople() {
    return PourPlanner.plan(unit, SHEET, Crew.of(8, 4, 8, 1), Healing.of(200), List.of());
  }

  /** The ribbons of a wavy floor of 6,000 cells. */
  @Benchmark
  public BayPlan ribbons() {
    return BayPlan.of(List.of(room), field, TestRooms.BUCKETS);
  }

  /** Ribbons, crew and search together, nothing holds. */
  @Benchmark
  public Pour ribbonsAndPour() {
    return PourPlanner.plan(ribbons(), SHEET, Crew.usual(), Healing.of(200), List.of());
  }

  /** The same where batches in a row meet in time and ribbons do not, so that dams are tried. */
  @Benchmark
  public Pour ribbonsAndPourWithDams() {
    return PourPlanner.plan(ribbons(), SHEET, Crew.usual(), Healing.of(650), List.of());
  }
}
