package dev.fillplane.depth;

import dev.fillplane.surface.FloorResiduals;
import java.util.Arrays;

/** The residuals of all realisations, side by side for each coarse cell that was asked for. */
final class ResidualRows {

  /** The residuals of one coarse cell with their ends. */
  record Row(double[] values, double lowest, double highest) {

    /** One realisation that is the mean floor. */
    static final Row NONE = new Row(new double[1], 0, 0);
  }

  private final FloorResiduals residuals;
  private Row[] rows = new Row[0];

  ResidualRows(FloorResiduals residuals) {
    this.residuals = residuals;
  }

  Row at(int cell) {
    if (cell >= rows.length) {
      rows = Arrays.copyOf(rows, Math.max(cell + 1, 2 * rows.length));
    }
    if (rows[cell] == null) {
      rows[cell] = row(cell);
    }
    return rows[cell];
  }

  private Row row(int cell) {
    double[] values = new double[residuals.count()];
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (int draw = 0; draw < values.length; draw++) {
      values[draw] = residuals.residual(draw, cell);
      lowest = Math.min(lowest, values[draw]);
      highest = Math.max(highest, values[draw]);
    }
    return new Row(values, lowest, highest);
  }
}
