package dev.fillplane.surface;

import dev.fillplane.finding.Stopped;
import org.tinfour.common.Vertex;
import org.tinfour.interpolation.IInterpolatorOverTin;
import org.tinfour.interpolation.IVertexValuator;
import org.tinfour.interpolation.NaturalNeighborInterpolator;
import org.tinfour.interpolation.TriangularFacetInterpolator;

/**
 * Interpolates over a triangulation. It remembers where it was asked last, so that a near position
 * is found fast: make one for each thread and each run of positions.
 */
final class DenseInterpolator {

  private final IInterpolatorOverTin inside;
  private final TriangularFacetInterpolator planes;
  private final HullPath outside;
  private final IVertexValuator values;

  /**
   * Over the values of the places.
   *
   * @param method natural neighbours or triangles
   */
  DenseInterpolator(Triangulation triangulation, Method method, double[] values) {
    inside = inside(triangulation, method);
    planes = new TriangularFacetInterpolator(triangulation.tin());
    outside = new HullPath(triangulation.tin().getPerimeter(), values);
    this.values = vertex -> values[vertex.getIndex()];
  }

  private static IInterpolatorOverTin inside(Triangulation triangulation, Method method) {
    return method == Method.TRIANGLES
        ? new TriangularFacetInterpolator(triangulation.tin())
        : new NaturalNeighborInterpolator(triangulation.tin());
  }

  /** The value at a position; outside the hull that at its nearest place on the hull. */
  double at(double x, double y) {
    Stopped.ifInterrupted();
    double value = inside.interpolate(x, y, values);
    if (Double.isNaN(value)) {
      // On the hull itself rounding may leave natural neighbours without an answer.
      value = planes.interpolate(x, y, values);
    }
    return Double.isNaN(value) ? outside.at(x, y) : value;
  }

  /** The share that each of some places has in the value at a position; NaN outside the hull. */
  static double[] weights(
      Triangulation triangulation, Method method, int[] places, double x, double y) {
    double[] weights = new double[places.length];
    int[] one = {0};
    IVertexValuator is = (Vertex vertex) -> vertex.getIndex() == one[0] ? 1 : 0;
    IInterpolatorOverTin interpolator = inside(triangulation, method);
    for (int i = 0; i < places.length; i++) {
      Stopped.ifInterrupted();
      one[0] = places[i];
      weights[i] = interpolator.interpolate(x, y, is);
    }
    return weights;
  }
}
