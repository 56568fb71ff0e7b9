package dev.fillplane.flatness;

/**
 * Counts the places of a straightedge by the gap under it: surely within its limit, surely over it,
 * or within the margin of the heights. Not thread safe.
 */
public final class Placements {

  /** Room for the rounding of a share of a whole number. */
  private static final double SHARE_ROUNDING = 1e-12;

  private long all;
  private long met;
  private long within;
  private long over;
  private double largest;

  /** Counts a place: its gap, what is allowed there and the margin of the gap, m. */
  void add(double gap, double allowed, double margin) {
    double edge = allowed + GapLimit.ROUNDING;
    all++;
    met += gap <= edge ? 1 : 0;
    within += gap + margin <= edge ? 1 : 0;
    over += gap - margin > edge ? 1 : 0;
    see(gap);
  }

  /** Counts a place that is surely within its limit, and whose gap is not the largest. */
  void addWithin() {
    all++;
    met++;
    within++;
  }

  /** Takes note of a gap that does not decide over its place. */
  void see(double gap) {
    largest = Math.max(largest, gap);
  }

  /** The largest gap, m; 0 where there is none. */
  public double largest() {
    return largest;
  }

  /** Share of the places that keep to the limit; 1 where there are none. */
  public double met() {
    return all == 0 ? 1 : (double) met / all;
  }

  /** Whether at least {@code share} of the places keep to the limit. */
  public Passes verdict(double share) {
    if (within >= share * all - SHARE_ROUNDING) {
      return Passes.WITHIN;
    }
    return over > (1 - share) * all + SHARE_ROUNDING ? Passes.OVER : Passes.UNCLEAR;
  }
}
