package dev.fillplane.plan;

import dev.fillplane.depth.DepthField;
import dev.fillplane.depth.VolumeDraws;
import dev.fillplane.flatness.FlatnessSummary;
import dev.fillplane.flatness.GrindAndPatch;
import dev.fillplane.flatness.GrindSums;
import dev.fillplane.flatness.Passes;
import dev.fillplane.supply.BagOdds;
import dev.fillplane.target.TargetShape;
import java.util.List;

/** The ways to deal with a floor, before what was asked. */
final class Options {

  private final PlanRequest request;
  private final LevelledFloor floor;
  private final FlatnessSummary flatness;
  private final Costs costs;
  private final Labour labour;

  private Options(
      PlanRequest request,
      LevelledFloor floor,
      FlatnessSummary flatness,
      Costs costs,
      Labour labour) {
    this.request = request;
    this.floor = floor;
    this.flatness = flatness;
    this.costs = costs;
    this.labour = labour;
  }

  /** All of them, the least work first. */
  static List<Option> of(
      PlanRequest request,
      LevelledFloor floor,
      FlatnessSummary flatness,
      Costs costs,
      Labour labour) {
    Options options = new Options(request, floor, flatness, costs, labour);
    return List.of(
        options.option(OptionName.NO_POUR, flatness.before().verdict(), Work.NONE),
        options.grindAndPatch(),
        options.pour(OptionName.FLAT, TargetShape.PLANE),
        options.pour(OptionName.LEVEL, TargetShape.LEVEL));
  }

  /** What one way takes. */
  private record Work(int bags, double fill, double grindArea, double ground, double seconds) {
    static final Work NONE = new Work(0, 0, 0, 0, 0);
  }

  private Option option(OptionName name, Passes passes, Work work) {
    return new Option(
        name,
        passes,
        work.bags(),
        work.grindArea(),
        work.seconds(),
        costs.of(work.fill(), work.ground()));
  }

  /** Where the floor passes as it is, there is nothing to grind or patch. */
  private Option grindAndPatch() {
    if (flatness.before().verdict() == Passes.WITHIN) {
      return option(OptionName.GRIND_AND_PATCH, Passes.WITHIN, Work.NONE);
    }
    GrindSums work =
        GrindAndPatch.sums(floor.polygons(), floor.sample()::elevation, flatness.limit());
    boolean nothing = work.grindArea() == 0 && work.patchVolume() == 0;
    Passes passes = nothing ? flatness.before().verdict() : Passes.UNCLEAR;
    int bags = BagOdds.likely(work.patchVolume(), 0, floor.sheet());
    double seconds = labour.grinding(work.grindArea()) + labour.patching(bags);
    return option(
        OptionName.GRIND_AND_PATCH,
        passes,
        new Work(bags, work.patchVolume(), work.grindArea(), work.grindVolume(), seconds));
  }

  private Option pour(OptionName name, TargetShape shape) {
    DepthField field = floor.under(floor.plainly(shape));
    VolumeDraws draws = floor.draws(field);
    int bags = BagOdds.likely(draws.volumes(), draws.wetAreas(), floor.sheet(), request.seed());
    return option(
        name,
        flatness.after().verdict(),
        new Work(bags, field.volume(), 0, 0, labour.pouring(bags)));
  }
}
