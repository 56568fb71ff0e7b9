package dev.fillplane.job;

/** What came of a unit; kept by its ordinal. */
public enum UnitState {
  /** Not worked on yet. */
  WAITING,
  /** There is a plan. */
  PLANNED,
  /** There is a problem instead. */
  FAILED
}
