package dev.fillplane.pour;

/**
 * How long edges heal on a site.
 *
 * @param time from first water until an edge no longer closes
 * @param vouched whether air, floor and mix are no hotter than the data sheet allows. Its times are
 *     shorter above that by nobody knows how much and are not extrapolated, so that a pour is tight
 *     there at best. Cold spoils a pour as well, but leaves more time: a warning does
 */
public record Healing(double time, boolean vouched) {

  /** A time that can be relied on. */
  public static Healing of(double time) {
    return new Healing(time, true);
  }

  /** What may be said of a pour whose oldest edge has an age. */
  Verdict verdict(double age) {
    if (vouched && age <= limit()) {
      return Verdict.HOLDS;
    }
    return age <= time ? Verdict.TIGHT : Verdict.BREAKS;
  }

  /** The oldest that leaves the reserve. */
  public double limit() {
    return (1 - FloorPour.RESERVE) * time;
  }
}
