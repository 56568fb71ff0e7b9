package dev.fillplane.supply;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Arrays;

/**
 * How many layers a deep pour takes and how thick each is where the pour is deepest: as few as the
 * sheet allows, each between its least and its largest.
 *
 * <p>The top layer gets {@link #TOP_SHARE} of the largest layer, which flows well and keeps the
 * lower ones small; more where the lower ones could not hold the rest, less where they would be
 * left too thin. The lower ones share the rest evenly. 32 mm with a maximum of 30 mm are 20 and
 * then 12 mm, never 30 + 2 (common practice, no source; the share is our choice).
 *
 * <p>Some depths have no such layers: with 10 to 12 mm a layer, 15 mm are too much for one and too
 * little for two. Then all are equally thick, which is too thin, and a warning says so.
 */
public final class LiftRule {

  /** More layers than this are no levelling job. */
  static final int MOST = 20;

  /** Thickness of the top layer as a share of the sheet's largest. */
  static final double TOP_SHARE = 0.4;

  /** Keeps the last digits of a depth from costing a layer. */
  private static final double ROUNDING = 1e-9;

  private final double deepest;
  private final double least;
  private final double largest;

  /** The layers of a pour that is {@code deepest} m at its deepest place. */
  public LiftRule(double deepest, DataSheet sheet) {
    this.deepest = deepest;
    this.least = sheet.minimumLift();
    this.largest = sheet.maximumLift();
  }

  /** How many layers; at least 1. */
  public int number() {
    return Math.max(1, (int) Math.ceil(deepest / largest - ROUNDING));
  }

  /** Whether each of several layers can be as thick as the sheet wants it. */
  boolean fits() {
    return number() == 1 || deepest >= number() * least - ROUNDING;
  }

  /** The thickness of each layer where the pour is deepest, from the bottom. */
  double[] thicknesses() {
    int number = number();
    double[] thicknesses = new double[number];
    Arrays.fill(thicknesses, deepest / number);
    if (number > 1 && fits()) {
      double top = top(number - 1);
      Arrays.fill(thicknesses, (deepest - top) / (number - 1));
      thicknesses[number - 1] = top;
    }
    return thicknesses;
  }

  private double top(int lower) {
    double thinnest = Math.max(least, deepest - lower * largest);
    double thickest = Math.min(largest, deepest - lower * least);
    return Math.min(thickest, Math.max(thinnest, TOP_SHARE * largest));
  }

  /** Says that one layer is not enough, and what is wrong with so many. */
  public void warn(Place place, Findings findings) {
    int number = number();
    Amount depth = Amount.of(deepest, Dimension.HEIGHT);
    Amount maximum = Amount.of(largest, Dimension.HEIGHT);
    if (number > MOST) {
      findings.error("too-many-lifts", place, "depth", depth, "maximum", maximum, "most", MOST);
    } else if (number > 1) {
      findings.warning(
          "deeper-than-one-lift", place, "depth", depth, "maximum", maximum, "lifts", number);
      warnOfNoFit(number, depth, place, findings);
    }
  }

  private void warnOfNoFit(int number, Amount depth, Place place, Findings findings) {
    if (!fits()) {
      findings.warning(
          "lift-too-thin",
          place,
          "depth",
          depth,
          "fewer",
          number - 1,
          "most",
          Amount.of((number - 1) * largest, Dimension.HEIGHT),
          "lifts",
          number,
          "least",
          Amount.of(number * least, Dimension.HEIGHT));
    }
  }
}
