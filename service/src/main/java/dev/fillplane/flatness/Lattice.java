package dev.fillplane.flatness;

import dev.fillplane.depth.CarriedNodes;
import dev.fillplane.room.Position;
import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * Heights of a room at the nodes of a lattice along its longest wall, by line and column; NaN
 * outside the room. Columns have a constant u, lines a constant v of the frame.
 */
final class Lattice {

  private final Frame frame;
  private final double[] columns;
  private final double[] lines;
  private final double[][] heights;
  private final double spacing;
  private final double nodeArea;

  private Lattice(
      Frame frame,
      double[] columns,
      double[] lines,
      double[][] heights,
      double spacing,
      double nodeArea) {
    this.frame = frame;
    this.columns = columns;
    this.lines = lines;
    this.heights = heights;
    this.spacing = spacing;
    this.nodeArea = nodeArea;
  }

  static Lattice of(Polygon room, DoubleBinaryOperator elevation, double spacing) {
    Frame frame = Frame.of(room, 0);
    ScanLines scan = ScanLines.of(room, frame);
    double[] columns = scan.columns(spacing);
    double[] lines = scan.lines(spacing);
    double[][] heights = new double[lines.length][];
    long inside = 0;
    for (int line = 0; line < lines.length; line++) {
      heights[line] = row(frame, columns, lines[line], scan.runs(lines[line]), elevation);
      inside += Arrays.stream(heights[line]).filter(height -> !Double.isNaN(height)).count();
    }
    double nodeArea = inside == 0 ? 0 : room.getArea() / inside;
    return new Lattice(frame, columns, lines, heights, spacing, nodeArea);
  }

  private static double[] row(
      Frame frame, double[] columns, double v, double[] runs, DoubleBinaryOperator elevation) {
    double[] row = new double[columns.length];
    Arrays.fill(row, Double.NaN);
    for (int run = 0; run < runs.length; run += 2) {
      for (int i = 0; i < columns.length; i++) {
        if (runs[run] <= columns[i] && columns[i] <= runs[run + 1]) {
          row[i] = elevation.applyAsDouble(frame.x(columns[i], v), frame.y(columns[i], v));
        }
      }
    }
    return row;
  }

  /** The height of the plane of least squares through the nodes, by plan coordinates. */
  DoubleBinaryOperator plane() {
    Trend trend = trend();
    return (x, y) -> trend.at(frame.u(x, y), frame.v(x, y));
  }

  private Trend trend() {
    Trend trend = new Trend();
    forEachNode((line, i) -> trend.add(columns[i], lines[line], heights[line][i]));
    trend.fit();
    return trend;
  }

  /** The same with heights above that plane. */
  Lattice aboveTrend() {
    Trend trend = trend();
    double[][] above = new double[lines.length][];
    for (int line = 0; line < lines.length; line++) {
      double v = lines[line];
      double[] row = heights[line];
      above[line] = new double[columns.length];
      Arrays.setAll(above[line], i -> row[i] - trend.at(columns[i], v));
    }
    return new Lattice(frame, columns, lines, above, spacing, nodeArea);
  }

  /** The same with every height the other way up. */
  Lattice upsideDown() {
    double[][] below = new double[lines.length][];
    for (int line = 0; line < lines.length; line++) {
      below[line] = Arrays.stream(heights[line]).map(height -> -height).toArray();
    }
    return new Lattice(frame, columns, lines, below, spacing, nodeArea);
  }

  int columns() {
    return columns.length;
  }

  int lines() {
    return lines.length;
  }

  double height(int line, int column) {
    return heights[line][column];
  }

  Position position(int line, int column) {
    return frame.position(columns[column], lines[line]);
  }

  /** The heights as level rings want them; columns and lines as its columns and rows. */
  CarriedNodes carried() {
    double[] known = new double[columns.length * lines.length];
    for (int line = 0; line < lines.length; line++) {
      System.arraycopy(heights[line], 0, known, line * columns.length, columns.length);
    }
    return CarriedNodes.of(columns.length, lines.length, known);
  }

  /** From columns and lines, with parts of them, to plan coordinates. */
  Coordinate onPlan(Coordinate node) {
    double u = columns[0] + node.x * spacing;
    double v = lines[0] + node.y * spacing;
    return new Coordinate(frame.x(u, v), frame.y(u, v));
  }

  /** The part of the room that each node inside stands for. */
  double nodeArea() {
    return nodeArea;
  }

  /** Every node inside the room, line by line. */
  void forEachNode(NodeVisitor visitor) {
    for (int line = 0; line < lines.length; line++) {
      for (int i = 0; i < columns.length; i++) {
        if (!Double.isNaN(heights[line][i])) {
          visitor.visit(line, i);
        }
      }
    }
  }

  /** Is shown each node by its line and its column. */
  interface NodeVisitor {
    void visit(int line, int column);
  }
}
