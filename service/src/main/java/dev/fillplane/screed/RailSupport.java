package dev.fillplane.screed;

/** What a rail stands by. */
public enum RailSupport {
  /** Along a wall. */
  WALL,
  /** The finished edge of a bay poured earlier; no rail is set. */
  EDGE,
  /** By itself; it comes out as the pour passes. */
  FREE
}
