package dev.fillplane.pour;

/** How the mix comes to the floor. */
public enum Placing {
  /** Mixed in barrels, carried and poured by hand. */
  BARREL,
  /** Mixed and pumped by a machine that is fed with bags, poured from a hose. */
  PUMP
}
