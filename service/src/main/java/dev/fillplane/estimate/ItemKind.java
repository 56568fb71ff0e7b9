package dev.fillplane.estimate;

/** What a line is for. */
public enum ItemKind {
  /** Stays in the floor. */
  MATERIAL,
  /** Used up by the work. */
  CONSUMABLE,
  /** Hours of people. */
  LABOUR,
  /** Hired or depreciated by the day. */
  EQUIPMENT,
  /** Taken away. */
  DISPOSAL
}
