package dev.fillplane.plan;

/** By what variations are put in order, the least first. */
public enum ComparedBy {
  COST,
  BAGS,
  VOLUME,
  GRIND,
  MINUTES
}
