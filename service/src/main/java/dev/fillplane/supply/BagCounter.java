package dev.fillplane.supply;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Arrays;

/**
 * Bags, water and primer of a layer from its area and thickness, without a survey. The odds are
 * those of placing and yield, and of a range of thickness, between whose ends every mean thickness
 * is taken as equally likely.
 *
 * @see BagOdds
 */
public final class BagCounter {

  /** Largest area that is answered, 100 hectares: beyond it the unit of the request is wrong. */
  public static final double MOST_AREA = 1e6;

  private static final Place ROOT = Place.root();

  /** Thicknesses that stand for a range. */
  private static final int THICKNESSES = 64;

  /** The same for every count, so drawn once. */
  private static final PlacingErrors ERRORS = PlacingErrors.draw(THICKNESSES, 1);

  private final Findings findings = new Findings();
  private final BagCountRequest request;

  private BagCounter(BagCountRequest request) {
    this.request = request;
  }

  /**
   * Counts bags.
   *
   * @throws dev.fillplane.finding.FindingsException if area or thickness is not positive, not
   *     exactly one of thickness and range is told, the confidence is not between 0 and 1, or the
   *     material contradicts itself
   */
  public static BagCount count(BagCountRequest request) {
    return new BagCounter(request).count();
  }

  private BagCount count() {
    DataSheet sheet = Catalogue.resolve(request.material(), ROOT.at("material"), findings);
    checkArea();
    checkThickness();
    checkConfidence();
    findings.throwIfErrors();
    ThicknessRange range = range();
    int lifts = lifts(range, sheet);
    findings.throwIfErrors();
    double area = request.area();
    double fill = area * range.mean();
    double[] areas = new double[THICKNESSES];
    Arrays.fill(areas, area);
    double[] volumes = range.volumes(area, THICKNESSES);
    Bags bags = BagOdds.of(volumes, areas, sheet, request.confidence(), ERRORS);
    return new BagCount(
        bags,
        fill,
        bags.order() * sheet.waterPerBag(),
        PrimerNeed.of(area, request.absorbency(), lifts, sheet),
        bags.order() * sheet.bagMass(),
        findings.warnings());
  }

  private void checkArea() {
    positive(request.area(), ROOT.at("area"), "area");
    if (request.area() > MOST_AREA) {
      findings.error(
          "area-too-large", ROOT.at("area"), "limit", Amount.of(MOST_AREA, Dimension.AREA));
    }
  }

  private void checkThickness() {
    if (request.thickness().isPresent() == request.thicknessRange().isPresent()) {
      findings.error("thickness-or-range", ROOT);
      return;
    }
    request.thickness().ifPresent(t -> positive(t, ROOT.at("thickness"), "thickness"));
    request.thicknessRange().ifPresent(this::checkRange);
  }

  private void checkRange(ThicknessRange range) {
    Place place = ROOT.at("thicknessRange");
    if (!(range.from() >= 0)) {
      findings.error("negative", place.at("from"), "name", "from");
    }
    positive(range.to(), place.at("to"), "to");
    if (range.from() > range.to()) {
      findings.error("range-upside-down", place);
    }
  }

  private void positive(double value, Place place, String name) {
    if (!(value > 0)) {
      findings.error("not-positive", place, "name", name);
    }
  }

  private void checkConfidence() {
    if (!(request.confidence() > 0 && request.confidence() < 1)) {
      findings.error("confidence-outside", ROOT.at("confidence"));
    }
  }

  private ThicknessRange range() {
    double thickness = request.thickness().orElse(0);
    return request.thicknessRange().orElse(new ThicknessRange(thickness, thickness));
  }

  private int lifts(ThicknessRange range, DataSheet sheet) {
    Place place =
        request.thickness().isPresent() ? ROOT.at("thickness") : ROOT.at("thicknessRange");
    if (range.from() < sheet.minimumLift() * (1 - 1e-9)) {
      findings.warning(
          "thinner-than-sheet",
          place,
          "thickness",
          Amount.of(range.from(), Dimension.HEIGHT),
          "minimum",
          Amount.of(sheet.minimumLift(), Dimension.HEIGHT));
    }
    LiftRule rule = new LiftRule(range.to(), sheet);
    rule.warn(place, findings);
    return rule.number();
  }
}
