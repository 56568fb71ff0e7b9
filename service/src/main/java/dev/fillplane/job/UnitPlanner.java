package dev.fillplane.job;

/** Answers the request of a unit. Called by several threads at once. */
@FunctionalInterface
public interface UnitPlanner {

  /**
   * The plan, or the problem that there is none; the same for the same body. Throws where it was
   * kept from planning; the unit comes again later.
   */
  UnitAnswer plan(byte[] body);
}
