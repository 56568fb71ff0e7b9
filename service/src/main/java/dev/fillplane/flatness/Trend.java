package dev.fillplane.flatness;

/** A plane of least squares, height = c + a u + b v, about the mean of its points. */
final class Trend {

  /** Points that spread less than this part of their extent beside a line count as on the line. */
  private static final double COLLINEAR = 1e-9;

  private double count;
  private double u;
  private double v;
  private double h;
  private double uu;
  private double uv;
  private double vv;
  private double uh;
  private double vh;
  private double a;
  private double b;

  /** Adds a point, means and cross products brought up to date together (Welford). */
  void add(double pointU, double pointV, double height) {
    count++;
    double du = pointU - u;
    double dv = pointV - v;
    double dh = height - h;
    u += du / count;
    v += dv / count;
    h += dh / count;
    uu += du * (pointU - u);
    uv += du * (pointV - v);
    vv += dv * (pointV - v);
    uh += du * (height - h);
    vh += dv * (height - h);
  }

  /** Fits the plane; a level one through the mean where the points lie on a line. */
  void fit() {
    double determinant = uu * vv - uv * uv;
    boolean plane = determinant > COLLINEAR * uu * vv;
    a = plane ? (uh * vv - vh * uv) / determinant : 0;
    b = plane ? (vh * uu - uh * uv) / determinant : 0;
  }

  double at(double pointU, double pointV) {
    return h + a * (pointU - u) + b * (pointV - v);
  }
}
