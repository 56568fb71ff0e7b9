package dev.fillplane.flatness;

/**
 * What makes a floor flat without a pour, in sum; a sliver along a wall counts where it has a node.
 *
 * @param grindArea floor to grind
 * @param grindVolume to grind off
 * @param patchVolume patching compound to fill
 * @see GrindAndPatch
 */
public record GrindSums(double grindArea, double grindVolume, double patchVolume) {

  /** Sums up what stands more than {@code half} over or under a lattice about its plane. */
  static GrindSums of(Lattice above, double half) {
    double[] sums = new double[3];
    above.forEachNode(
        (line, column) -> {
          double height = above.height(line, column);
          sums[0] += height > half ? 1 : 0;
          sums[1] += Math.max(0, height - half);
          sums[2] += Math.max(0, -half - height);
        });
    double node = above.nodeArea();
    return new GrindSums(sums[0] * node, sums[1] * node, sums[2] * node);
  }

  GrindSums and(GrindSums other) {
    return new GrindSums(
        grindArea + other.grindArea,
        grindVolume + other.grindVolume,
        patchVolume + other.patchVolume);
  }
}
