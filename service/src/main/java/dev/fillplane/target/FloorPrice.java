package dev.fillplane.target;

import dev.fillplane.surface.FloorCutter;
import dev.fillplane.surface.PlaneCut;

/**
 * What planes cost: {@code s Int max(d, 0) + (1 - s) Int max(-d, 0)} per area and unit of height,
 * where d is the depth over the minimum and s the share of filling in the sum of both prices. Exact
 * for the piecewise-linear floor, with its slope and its bend (gradient and Hessian).
 *
 * <p>The rest of the price, that of the minimum depth everywhere, is the same for all planes.
 */
final class FloorPrice {

  /** Price, slope along the three unknowns of a plane, and bend: 11, 12, 13, 22, 23, 33. */
  record Priced(double price, double[] slope, double[] bend) {}

  private final FloorCutter floor;
  private final PlaneScale scale;
  private final double minimumDepth;
  private final double fill;
  private final double grind;

  FloorPrice(Limits limits, PlaneScale scale, Rates rates) {
    floor = limits.highs().floor().cutter(limits.highs().rooms(), scale.centroid());
    this.scale = scale;
    minimumDepth = limits.minimumDepth();
    fill = rates.relativeFill();
    grind = rates.relativeGrind();
  }

  Priced at(double[] plane) {
    double reach = scale.reach();
    double area = floor.area();
    PlaneCut cut =
        floor.cut(
            scale.top() + plane[0] * scale.unit() - minimumDepth,
            scale.slope(plane[1]),
            scale.slope(plane[2]));
    double both = fill + grind;
    double price = fill * net(plane) + both * cut.volume() / (area * scale.unit());
    double[] slope = {
      fill - both * cut.area() / area,
      (fill * floor.momentX() - both * cut.momentX()) / (area * reach),
      (fill * floor.momentY() - both * cut.momentY()) / (area * reach)
    };
    double unit = both * scale.unit() / area;
    double[] e = cut.edge();
    double[] bend = {
      unit * e[0],
      unit * e[1] / reach,
      unit * e[2] / reach,
      unit * e[3] / (reach * reach),
      unit * e[4] / (reach * reach),
      unit * e[5] / (reach * reach)
    };
    return new Priced(price, slope, bend);
  }

  /** Filled less ground over the minimum depth; linear. */
  private double net(double[] plane) {
    double level = scale.top() + plane[0] * scale.unit() - minimumDepth;
    double tilted =
        scale.slope(plane[1]) * floor.momentX() + scale.slope(plane[2]) * floor.momentY();
    return (level + (tilted - floor.volume()) / floor.area()) / scale.unit();
  }

  /** Price of the minimum depth everywhere, in the same units. */
  double base() {
    return fill * minimumDepth / scale.unit();
  }

  /** Tells a program that the price is at least that of the net volume, either way. */
  void bound(PlaneProgram program) {
    double constant = net(new double[3]);
    double x = floor.momentX() / (floor.area() * scale.reach());
    double y = floor.momentY() / (floor.area() * scale.reach());
    program.priceAtLeast(fill * constant, fill, fill * x, fill * y);
    program.priceAtLeast(-grind * constant, -grind, -grind * x, -grind * y);
  }

  /**
   * The height of the level over the mean floor, with the slope and bend of the squares about the
   * floor.
   */
  Priced squares() {
    double reach = scale.reach();
    double area = floor.area();
    double mean = floor.volume() / area;
    double[] s = floor.seconds();
    double[] slope = {
      0,
      (mean * floor.momentX() - s[3]) / (area * reach * scale.unit()),
      (mean * floor.momentY() - s[4]) / (area * reach * scale.unit())
    };
    double square = area * reach * reach;
    double x = floor.momentX() / (area * reach);
    double y = floor.momentY() / (area * reach);
    double[] bend = {1, x, y, s[0] / square, s[1] / square, s[2] / square};
    return new Priced(scale.height(mean + minimumDepth), slope, bend);
  }
}
