package dev.fillplane.heat;

/** Whether a slab is dry enough to be primed. */
public enum MoistureVerdict {
  /** Within the limit, or under a barrier. */
  GO,
  /** Over the limit and bare. */
  NO_GO,
  /** Nobody has told its humidity, or there is no slab. */
  UNKNOWN
}
