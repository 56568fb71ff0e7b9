package dev.fillplane.surface;

/** Why a reading is wanted at a place. */
public enum SpotReason {
  /** Floors meet there, and a door has to clear the pour. */
  DOORWAY,
  /** Floors are lowest or highest in corners, and nothing beyond tells of them. */
  CORNER,
  /** Along a long wall. */
  WALL,
  /** Where it narrows the volume most. */
  INSIDE
}
