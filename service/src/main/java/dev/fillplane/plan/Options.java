package dev.fillplane.plan;

import dev.fillplane.depth.DepthField;
import dev.fillplane.depth.VolumeDraws;
import dev.fillplane.flatness.FlatnessSummary;
import dev.fillplane.flatness.GrindAndPatch;
import dev.fillplane.flatness.Passes;
import dev.fillplane.pour.Pour;
import dev.fillplane.supply.BagOdds;
import dev.fillplane.supply.Bags;
import dev.fillplane.target.TargetShape;
import java.util.List;

/** The ways to deal with a floor, in short, before what was asked. */
final class Options {

  /** Floor that one person grinds in an hour, in m2 (common practice, no source). */
  static final double GRIND_RATE = 8.0 / 3600;

  private final PlanRequest request;
  private final LevelledFloor floor;
  private final FlatnessSummary flatness;
  private final double secondsPerBag;

  private Options(
      PlanRequest request, LevelledFloor floor, FlatnessSummary flatness, double secondsPerBag) {
    this.request = request;
    this.floor = floor;
    this.flatness = flatness;
    this.secondsPerBag = secondsPerBag;
  }

  /** All of them, the least work first; times of pouring at the rate of the planned pour. */
  static List<Option> of(
      PlanRequest request, LevelledFloor floor, FlatnessSummary flatness, Bags bags, Pour pour) {
    double secondsPerBag = bags.likely() > 0 ? pour.minutes() / bags.likely() : 0;
    Options options = new Options(request, floor, flatness, secondsPerBag);
    return List.of(
        new Option(OptionName.NO_POUR, flatness.before().verdict(), 0, 0, 0),
        options.grindAndPatch(),
        options.pour(OptionName.FLAT, TargetShape.PLANE),
        options.pour(OptionName.LEVEL, TargetShape.LEVEL));
  }

  /** Where the floor passes as it is, there is nothing to grind or patch. */
  private Option grindAndPatch() {
    if (flatness.before().verdict() == Passes.WITHIN) {
      return new Option(OptionName.GRIND_AND_PATCH, Passes.WITHIN, 0, 0, 0);
    }
    GrindAndPatch work =
        GrindAndPatch.of(floor.polygons(), floor.sample()::elevation, flatness.limit());
    int bags = BagOdds.likely(work.patchVolume(), 0, floor.sheet());
    boolean nothing = work.grindArea() == 0 && work.patchVolume() == 0;
    Passes passes = nothing ? flatness.before().verdict() : Passes.UNCLEAR;
    double seconds = work.grindArea() / GRIND_RATE + bags * secondsPerBag;
    return new Option(OptionName.GRIND_AND_PATCH, passes, bags, work.grindArea(), seconds);
  }

  private Option pour(OptionName name, TargetShape shape) {
    DepthField field = floor.under(floor.plainly(shape));
    VolumeDraws draws = floor.draws(field);
    Bags bags =
        BagOdds.of(
            draws.volumes(), draws.wetAreas(), floor.sheet(), request.confidence(), request.seed());
    return new Option(
        name,
        flatness.after().verdict(),
        bags.likely(),
        field.grindArea(),
        bags.likely() * secondsPerBag);
  }
}
