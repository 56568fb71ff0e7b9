package dev.fillplane.surface;

/**
 * Sums the parts of triangles in which a linear depth is negative. Of a triangle with one negative
 * corner a the part is {@code A a^2 / ((a - b)(a - c))}, its mean depth a/3; with two negative
 * corners it is the rest beside the positive one.
 */
final class CutSum {

  private double area;
  private double momentX;
  private double momentY;
  private double volume;
  private final double[] edge = new double[6];

  /** A part that is cut off as a whole, with its centroid and mean depth. */
  void addWhole(double part, double x, double y, double depth) {
    area += part;
    momentX += part * x;
    momentY += part * y;
    volume -= part * depth;
  }

  /** A triangle with its signed area and the place and depth of each corner. */
  void add(
      double whole,
      double x1,
      double y1,
      double d1,
      double x2,
      double y2,
      double d2,
      double x3,
      double y3,
      double d3) {
    boolean low1 = d1 < 0;
    boolean low2 = d2 < 0;
    boolean low3 = d3 < 0;
    if (!low1 && !low2 && !low3) {
      return;
    }
    boolean mostlyLow = low1 ? low2 || low3 : low2 && low3;
    if (mostlyLow) {
      addWhole(whole, (x1 + x2 + x3) / 3, (y1 + y2 + y3) / 3, (d1 + d2 + d3) / 3);
      if (low1 && low2 && low3) {
        return;
      }
    }
    // The corner that lies alone on its side; what is there comes in, or goes out again.
    double sign = mostlyLow ? -whole : whole;
    if (low1 != low2 && low1 != low3) {
      addTip(sign, x1, y1, d1, x2, y2, d2, x3, y3, d3);
    } else if (low2 != low1) {
      addTip(sign, x2, y2, d2, x3, y3, d3, x1, y1, d1);
    } else {
      addTip(sign, x3, y3, d3, x1, y1, d1, x2, y2, d2);
    }
  }

  private void addTip(
      double whole,
      double x1,
      double y1,
      double d1,
      double x2,
      double y2,
      double d2,
      double x3,
      double y3,
      double d3) {
    double to2 = d1 / (d1 - d2);
    double to3 = d1 / (d1 - d3);
    double px = x1 + to2 * (x2 - x1);
    double py = y1 + to2 * (y2 - y1);
    double qx = x1 + to3 * (x3 - x1);
    double qy = y1 + to3 * (y3 - y1);
    double tip = whole * to2 * to3;
    addWhole(tip, (x1 + px + qx) / 3, (y1 + py + qy) / 3, d1 / 3);
    if (d1 != 0) {
      addEdge(
          Math.abs(2 * tip / d1) * (whole < 0 == d1 < 0 ? -1 : 1), (px + qx) / 2, (py + qy) / 2);
    }
  }

  private void addEdge(double weight, double x, double y) {
    edge[0] += weight;
    edge[1] += weight * x;
    edge[2] += weight * y;
    edge[3] += weight * x * x;
    edge[4] += weight * x * y;
    edge[5] += weight * y * y;
  }

  PlaneCut cut() {
    return new PlaneCut(area, momentX, momentY, volume, edge);
  }
}
