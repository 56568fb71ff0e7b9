package dev.fillplane.flatness;

import dev.fillplane.room.Position;
import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
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
  private final double nodeArea;

  private Lattice(
      Frame frame, double[] columns, double[] lines, double[][] heights, double nodeArea) {
    this.frame = frame;
    this.columns = columns;
    this.lines = lines;
    this.heights = heights;
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
    return new Lattice(frame, columns, lines, heights, inside == 0 ? 0 : room.getArea() / inside);
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

  /** The same with heights above the plane of least squares through the nodes. */
  Lattice aboveTrend() {
    Trend trend = new Trend();
    forEachNode((line, i) -> trend.add(columns[i], lines[line], heights[line][i]));
    trend.fit();
    double[][] above = new double[lines.length][];
    for (int line = 0; line < lines.length; line++) {
      double v = lines[line];
      double[] row = heights[line];
      above[line] = new double[columns.length];
      Arrays.setAll(above[line], i -> row[i] - trend.at(columns[i], v));
    }
    return new Lattice(frame, columns, lines, above, nodeArea);
  }

  /** The same with every height the other way up. */
  Lattice upsideDown() {
    double[][] below = new double[lines.length][];
    for (int line = 0; line < lines.length; line++) {
      below[line] = Arrays.stream(heights[line]).map(height -> -height).toArray();
    }
    return new Lattice(frame, columns, lines, below, nodeArea);
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
