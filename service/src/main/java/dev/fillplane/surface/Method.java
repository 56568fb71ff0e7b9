package dev.fillplane.surface;

/** How the floor between the readings is found. */
public enum Method {
  /** {@link KrigedSurface}. */
  KRIGING,
  /** Sibson's natural neighbours, {@link DenseSurface}. */
  NATURAL_NEIGHBOUR,
  /** The planes of a Delaunay triangulation, {@link DenseSurface}. */
  TRIANGLES
}
