package dev.fillplane.safety;

/** What of the structure asks for an engineer before anything is poured. */
public enum StructureKind {
  /** An island, a tub, a stove, a safe. */
  CONCENTRATED_LOAD,
  /** Cut, notched or rotten. */
  DAMAGED_JOISTS,
  POST_TENSIONED,
  MOVING_CRACKS
}
