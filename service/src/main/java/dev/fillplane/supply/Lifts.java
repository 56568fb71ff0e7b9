package dev.fillplane.supply;

import dev.fillplane.depth.DepthSummary;
import dev.fillplane.depth.Grid;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/**
 * The layers of a pour that is deeper than the sheet allows in one.
 *
 * <p>As few layers as the sheet allows, equally thick where the pour is deepest, so that none is
 * thinner than it must be. The top layer covers all that is poured; a lower one only the part that
 * lies deeper than the layers above it are thick. Areas and volumes are shared out by the cells of
 * the depth grid and then scaled to the exact area and volume; a single layer is exact.
 */
public final class Lifts {

  /** More layers than this are no levelling job. */
  public static final int MOST = 20;

  /** Keeps the last digits of a depth from costing a layer. */
  private static final double ROUNDING = 1e-9;

  private final Grid grid;
  private final double thickness;

  private Lifts(Grid grid, double thickness) {
    this.grid = grid;
    this.thickness = thickness;
  }

  /**
   * Layers from the bottom; none where nothing is poured.
   *
   * @param place of the material in the request
   * @param findings receives a warning where one layer is not enough, or a layer would be thinner
   *     than the sheet allows, and an error where more than {@link #MOST} would be needed
   */
  public static List<Lift> of(DepthSummary depth, DataSheet sheet, Place place, Findings findings) {
    if (!(depth.maximum() > 0)) {
      return List.of();
    }
    int number = number(depth.maximum(), sheet);
    warn(number, depth.maximum(), sheet, place, findings);
    if (number == 1 || number > MOST) {
      return List.of(new Lift(1, depth.pouredArea(), depth.volume(), depth.maximum()));
    }
    return new Lifts(depth.grid(), depth.maximum() / number).layers(number, depth);
  }

  /** How many layers a pour needs where it is {@code deepest}; at least 1. */
  static int number(double deepest, DataSheet sheet) {
    return Math.max(1, (int) Math.ceil(deepest / sheet.maximumLift() - ROUNDING));
  }

  /** Says what is wrong with so many layers. */
  static void warn(int number, double deepest, DataSheet sheet, Place place, Findings findings) {
    Amount depth = Amount.of(deepest, Dimension.HEIGHT);
    Amount maximum = Amount.of(sheet.maximumLift(), Dimension.HEIGHT);
    if (number > MOST) {
      findings.error("too-many-lifts", place, "depth", depth, "maximum", maximum, "most", MOST);
    } else if (number > 1) {
      findings.warning(
          "deeper-than-one-lift", place, "depth", depth, "maximum", maximum, "lifts", number);
      warnOfThinLayers(deepest / number, sheet, place, findings);
    }
  }

  private static void warnOfThinLayers(
      double thickness, DataSheet sheet, Place place, Findings findings) {
    if (thickness < sheet.minimumLift() - ROUNDING) {
      findings.warning(
          "lift-too-thin",
          place,
          "thickness",
          Amount.of(thickness, Dimension.HEIGHT),
          "minimum",
          Amount.of(sheet.minimumLift(), Dimension.HEIGHT));
    }
  }

  private List<Lift> layers(int number, DepthSummary depth) {
    double cells = 0;
    for (int layer = 1; layer <= number; layer++) {
      cells += depths(above(layer, number));
    }
    int wet = cellsDeeperThan(0);
    double area = wet > 0 ? depth.pouredArea() / wet : 0;
    double volume = cells > 0 ? depth.volume() / cells : 0;
    List<Lift> lifts = new ArrayList<>();
    for (int layer = 1; layer <= number; layer++) {
      double above = above(layer, number);
      lifts.add(new Lift(layer, area * cellsDeeperThan(above), volume * depths(above), thickness));
    }
    return List.copyOf(lifts);
  }

  private double above(int layer, int number) {
    return (number - layer) * thickness;
  }

  private int cellsDeeperThan(double above) {
    int cells = 0;
    for (double depth : grid.depths()) {
      cells += depth > above ? 1 : 0;
    }
    return cells;
  }

  /** Sum over the cells of what lies in the layer under {@code above}. */
  private double depths(double above) {
    double sum = 0;
    for (double depth : grid.depths()) {
      sum += Math.max(0, Math.min(thickness, depth - above));
    }
    return sum;
  }
}
