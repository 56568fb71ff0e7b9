package dev.fillplane.pour;

/** Whether every wet edge is met in time. */
public enum Verdict {
  /** With a reserve. */
  HOLDS,
  /** Without a reserve. */
  TIGHT,
  /** Not in time: a cold joint. */
  BREAKS
}
