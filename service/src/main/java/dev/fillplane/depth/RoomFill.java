package dev.fillplane.depth;

/**
 * Volume and wet area of one room in the making, for the mean floor and for each realisation. Cells
 * that are wet in all realisations, as most are, are summed by coarse cell: only that sum is then
 * lessened by each residual.
 */
final class RoomFill {

  private final double[] volume;
  private final double[] area;
  private double meanVolume;
  private double meanArea;
  private double surelyWet;
  private double wetArea;
  private double wetVolume;

  RoomFill(int realisations) {
    volume = new double[realisations];
    area = new double[realisations];
  }

  /** Adds a cell of some mean depth over the mean floor to the coarse cell in the making. */
  void add(double cellArea, double depth, ResidualRow residuals) {
    if (depth > 0) {
      meanVolume += cellArea * depth;
      meanArea += cellArea;
    }
    if (depth > residuals.highest()) {
      wetArea += cellArea;
      wetVolume += cellArea * depth;
    } else if (depth > residuals.lowest()) {
      addWhereWet(cellArea, depth, residuals.values());
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

  /** Ends a coarse cell. */
  void end(ResidualRow residuals) {
    double[] values = residuals.values();
    double part = wetArea;
    double deep = wetVolume;
    for (int draw = 0; draw < volume.length; draw++) {
      volume[draw] += deep - part * values[draw];
    }
    surelyWet += wetArea;
    wetArea = 0;
    wetVolume = 0;
  }

  /** Volume under the mean floor's own cells. */
  double meanVolume() {
    return meanVolume;
  }

  double meanArea() {
    return meanArea;
  }

  double volume(int draw) {
    return volume[draw];
  }

  double area(int draw) {
    return surelyWet + area[draw];
  }
}
