package dev.fillplane.bay;

/** What the mix is spread from. */
public enum Spreading {
  /** Buckets, in beads of 0.30 to 0.45 m. */
  BUCKET,
  /** The hose of a pump, in lanes of 3 to 4.5 m. */
  PUMP
}
