package dev.fillplane.bay;

/**
 * How wide the ribbons of a bay are: as wide as one batch fills, within what the tool can lay.
 *
 * @param batch volume of a batch; positive
 * @param narrowest least width, kept where the bay is long enough
 * @param widest largest width
 * @param most ribbons of a bay at most; wider ones where there would be more
 */
public record RibbonRule(double batch, double narrowest, double widest, int most) {

  /** Refuses what cannot be poured. */
  public RibbonRule {
    if (!(batch > 0) || !(narrowest > 0) || !(widest >= narrowest) || most < 1) {
      throw new IllegalArgumentException("no such ribbons");
    }
  }

  /** Beads poured from a bucket, 0.30 to 0.45 m (common practice, no source). */
  public static RibbonRule byHand(double batch) {
    return new RibbonRule(batch, 0.30, 0.45, 400);
  }

  /** Lanes poured from a hose, 3 to 4.5 m (common practice, no source). */
  public static RibbonRule byHose(double batch) {
    return new RibbonRule(batch, 3.0, 4.5, 400);
  }

  /**
   * Longest front that is kept up with: 6 m by hand (common practice, no source), twice as much
   * where lanes are laid from a hose (own choice).
   */
  double longestFront() {
    boolean lanes = narrowest >= 1;
    return (lanes ? 2 : 1) * Bay.LONGEST_FRONT_BY_HAND;
  }

  /** Strips of the narrowest width that fit into {@code extent}. */
  int narrowStrips(double extent) {
    int fewest = roundUp(extent / widest);
    return Math.min(most, Math.max(fewest, roundDown(extent / narrowest)));
  }

  /** Strips of {@code extent} so that one that takes {@code volumePerLength} needs one batch. */
  int strips(double extent, double volumePerLength) {
    int wanted = roundUp(Math.min(extent * volumePerLength / batch, most));
    int fewest = Math.min(most, roundUp(extent / widest));
    return Math.max(fewest, Math.min(wanted, narrowStrips(extent)));
  }

  // A millionth of a strip is rounding, not a reason for one more.
  private static int roundUp(double strips) {
    return (int) Math.max(1, Math.min(Math.ceil(strips - 1e-6), Integer.MAX_VALUE));
  }

  private static int roundDown(double strips) {
    return (int) Math.max(1, Math.min(Math.floor(strips + 1e-6), Integer.MAX_VALUE));
  }
}
