package dev.fillplane.bench;

import dev.fillplane.depth.DepthField;
import dev.fillplane.depth.VolumeDraws;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.surface.FloorResiduals;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.KrigedSurface;
import dev.fillplane.surface.Spots;
import dev.fillplane.surface.SurfaceWish;
import dev.fillplane.survey.AdjustedPoint;
import dev.fillplane.survey.Elevations;
import dev.fillplane.survey.Survey;
import dev.fillplane.survey.SurveyAdjustment;
import dev.fillplane.target.Plane;
import java.util.Arrays;
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

/** From a survey to the odds of the volume on 6,000 cells with 200 realisations, and its pieces. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 4, time = 400, timeUnit = TimeUnit.MILLISECONDS)
@Fork(2)
public class SurveyToOddsBenchmark {

  private static final double CELL = 0.1;
  private static final int REALISATIONS = 200;

  /** Readings of the survey. */
  @Param({"60", "1000"})
  public int readings;

  private InventedFloor floor;
  private Survey survey;
  private Spots spots;
  private KrigedSurface surface;
  private FloorSample sample;
  private FloorResiduals residuals;
  private Plane target;

  /** Computes what the pieces begin with. */
  @Setup
  public void prepare() {
    floor = new InventedFloor(10, 6, readings);
    survey = floor.setup();
    spots = spots(adjust());
    surface = fit();
    sample = sample();
    residuals = draw();
    target = Plane.level(Arrays.stream(spots.elevation()).max().orElseThrow() + 0.003);
  }

  private static Spots spots(Elevations elevations) {
    List<AdjustedPoint> points = elevations.points();
    double[] variance = new double[points.size()];
    Arrays.fill(variance, 1e-6);
    return new Spots(
        points.stream().mapToDouble(point -> point.x().orElseThrow()).toArray(),
        points.stream().mapToDouble(point -> point.y().orElseThrow()).toArray(),
        points.stream().mapToDouble(AdjustedPoint::elevation).toArray(),
        variance);
  }

  /** The whole. */
  @Benchmark
  public VolumeDraws whole() {
    Spots read = spots(adjust());
    KrigedSurface laid = KrigedSurface.fit(read, SurfaceWish.usual());
    FloorSample cells = FloorSample.of(List.of(floor.room()), laid, CELL);
    FloorResiduals drawn = laid.realisations(floor.polygons(), REALISATIONS, 1);
    return DepthField.of(cells, target).volumes(drawn);
  }

  /** Survey to elevations. */
  @Benchmark
  public Elevations adjust() {
    return SurveyAdjustment.adjust(survey, Place.root(), new Findings());
  }

  /** Elevations to a surface. */
  @Benchmark
  public KrigedSurface fit() {
    return KrigedSurface.fit(spots, SurfaceWish.usual());
  }

  /** The surface on cells. */
  @Benchmark
  public FloorSample sample() {
    return FloorSample.of(List.of(floor.room()), surface, CELL);
  }

  /** Realisations. */
  @Benchmark
  public FloorResiduals draw() {
    return surface.realisations(floor.polygons(), REALISATIONS, 1);
  }

  /** Depths and the volume of each realisation. */
  @Benchmark
  public VolumeDraws volumes() {
    return DepthField.of(sample, target).volumes(residuals);
  }
}
