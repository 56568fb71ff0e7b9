package dev.fillplane.target;

/** Which rooms lie in one plane. */
public enum Sharing {
  /** All rooms. */
  ONE,
  /** Rooms that doorways join, also by way of others. */
  JOINED,
  /** Each room has its own. */
  EACH
}
