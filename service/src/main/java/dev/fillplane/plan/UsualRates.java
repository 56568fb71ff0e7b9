package dev.fillplane.plan;

/**
 * What one person does in an hour where nothing else is told (common practice, no source, of low
 * confidence).
 */
public final class UsualRates {

  /** Seconds in an hour. */
  public static final double HOUR = 3600;

  /** Floor that one person blasts or scours clean in an hour. */
  public static final double BLAST = 30;

  /** Floor that one person gives one coat of primer in an hour. */
  public static final double PRIME = 80;

  /** Edge that one person seals in an hour. */
  public static final double SEAL = 25;

  /** Time to wash barrels and tools. */
  public static final double WASH_UP = HOUR;

  private UsualRates() {}
}
