package dev.fillplane.plan;

import dev.fillplane.finding.Remark;
import dev.fillplane.flatness.GrindAndPatch;
import dev.fillplane.flatness.Hollow;
import dev.fillplane.flatness.Passes;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.supply.BagOdds;
import dev.fillplane.target.GrindWish;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Chooses the next pass over a floor (own rule, no source). A floor that passes is ready, one that
 * is not surely over its limit is read closer first. Else humps are ground and hollows patched,
 * unless the hollows cover more than a third of the floor or take as much as a skim over all of it:
 * then pouring is less work, with the hollows filled in the same pass. A skim is 2 mm (common
 * practice, no source), or the least lift of the material where that is more.
 */
final class NextPassRule {

  private static final double SKIM = 0.002;
  private static final double MUCH = 1.0 / 3;

  /** Floor that one person grinds in a second. */
  private static final double GRIND_RATE = GrindWish.DEFAULT_AREA_PER_HOUR / 3600;

  private final double floor;
  private final GrindAndPatch work;
  private final boolean poured;
  private final Optional<DataSheet> sheet;

  /** For a floor of an area, m2, with the work that makes it flat. */
  NextPassRule(double floor, GrindAndPatch work, boolean poured, Optional<DataSheet> sheet) {
    this.floor = floor;
    this.work = work;
    this.poured = poured;
    this.sheet = sheet;
  }

  NextPass choose(Passes verdict) {
    boolean grinds = !work.humps().isEmpty();
    boolean patches = !work.hollows().isEmpty();
    if (verdict == Passes.WITHIN) {
      return nothing(NextAction.READY, "next-ready");
    }
    if (verdict == Passes.UNCLEAR || !(grinds || patches)) {
      return nothing(NextAction.READ_MORE, "next-read-more");
    }
    if (patched() > MUCH * floor || work.patchVolume() >= skim() * floor) {
      return pour();
    }
    return flatten(grinds, patches);
  }

  private NextPass flatten(boolean grinds, boolean patches) {
    NextAction action = grinds ? NextAction.GRIND : NextAction.PATCH;
    Amount ground = Amount.of(work.grindArea(), Dimension.AREA);
    Remark why =
        patches
            ? Remark.of("next-patch", "area", Amount.of(patched(), Dimension.AREA))
            : Remark.of("next-grind", "area", ground);
    if (grinds && patches) {
      action = NextAction.GRIND_AND_PATCH;
      why =
          Remark.of(
              "next-grind-and-patch",
              "grind",
              ground,
              "patch",
              Amount.of(patched(), Dimension.AREA));
    }
    double volume = work.patchVolume();
    return new NextPass(
        action,
        work.grindArea() + (patches ? patched() : 0),
        volume,
        bags(volume, 0),
        work.grindArea() / GRIND_RATE,
        why);
  }

  /** The humps are ground first, since the skim follows the floor. */
  private NextPass pour() {
    double volume = work.patchVolume() + skim() * floor;
    return new NextPass(
        poured ? NextAction.SECOND_POUR : NextAction.POUR,
        floor,
        volume,
        bags(volume, floor),
        work.grindArea() / GRIND_RATE,
        Remark.of(
            poured ? "next-second-pour" : "next-pour",
            "hollows",
            Amount.of(patched(), Dimension.AREA),
            "floor",
            Amount.of(floor, Dimension.AREA),
            "patch",
            Amount.of(work.patchVolume(), Dimension.FILL),
            "skim",
            Amount.of(skim(), Dimension.HEIGHT)));
  }

  private NextPass nothing(NextAction action, String why) {
    return new NextPass(action, 0, 0, bags(0, 0), 0, Remark.of(why));
  }

  private OptionalInt bags(double volume, double area) {
    return sheet
        .map(known -> OptionalInt.of(BagOdds.likely(volume, area, known)))
        .orElse(OptionalInt.empty());
  }

  private double patched() {
    return work.hollows().stream().mapToDouble(Hollow::area).sum();
  }

  private double skim() {
    return Math.max(SKIM, sheet.map(DataSheet::minimumLift).orElse(0.0));
  }
}
