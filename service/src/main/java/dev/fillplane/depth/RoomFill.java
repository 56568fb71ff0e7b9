package dev.fillplane.depth;

/**
 * Volume and wet area of one room in the making, for each realisation. Cells come one after the
 * other and realisations side by side, so that where a cell is wet in all of them, as most are, the
 * sums become vector instructions.
 */
final class RoomFill {

  private final double[] volume;
  private final double[] area;

  RoomFill(int realisations) {
    volume = new double[realisations];
    area = new double[realisations];
  }

  /** Adds a cell of some mean depth over the mean floor. */
  void add(double cellArea, double depth, ResidualRows.Row residuals) {
    if (depth > residuals.highest()) {
      addWet(cellArea, depth, residuals.values());
    } else if (depth > residuals.lowest()) {
      addWhereWet(cellArea, depth, residuals.values());
    }
  }

  private void addWet(double cellArea, double depth, double[] residuals) {
    for (int draw = 0; draw < volume.length; draw++) {
      volume[draw] += cellArea * (depth - residuals[draw]);
      area[draw] += cellArea;
    }
  }

  private void addWhereWet(double cellArea, double depth, double[] residuals) {
    for (int draw = 0; draw < volume.length; draw++) {
      double deep = depth - residuals[draw];
      if (deep > 0) {
        volume[draw] += cellArea * deep;
        area[draw] += cellArea;
      }
    }
  }

  double volume(int draw) {
    return volume[draw];
  }

  double area(int draw) {
    return area[draw];
  }
}
