package dev.fillplane.surface;

import dev.fillplane.finding.Stopped;
import java.util.Arrays;

/**
 * Restricted likelihood of sill and range, given the spots and the variance of each measurement
 * (Patterson and Thompson 1971, Biometrika 58, 545-554): the likelihood of what is left of the
 * elevations after any drift, so that the drift does not have to be known.
 *
 * <p>Elevations and correlation are divided by the deviation of each measurement and turned into a
 * space without drift, where the covariance is {@code sill A + I}. For one range {@code A} is made
 * tridiagonal once; after that each sill costs only a few operations a spot.
 */
final class RestrictedLikelihood {

  private final int terms;
  private final double[] weight;
  private final double[][] distance;
  private final Reflection[] drift;
  private final double[] elevation;

  RestrictedLikelihood(LocalSpots spots, DriftTerms driftTerms) {
    int n = spots.count();
    terms = driftTerms.count();
    weight = new double[n];
    elevation = new double[n];
    distance = new double[n][n];
    for (int i = 0; i < n; i++) {
      Stopped.ifInterrupted();
      weight[i] = 1 / Math.sqrt(spots.variance()[i]);
      elevation[i] = weight[i] * spots.z()[i];
      for (int j = 0; j <= i; j++) {
        distance[i][j] = Math.hypot(spots.x()[i] - spots.x()[j], spots.y()[i] - spots.y()[j]);
      }
    }
    drift = withoutDrift(driftTerms.columns(spots.x(), spots.y()));
  }

  private Reflection[] withoutDrift(double[][] columns) {
    Reflection[] reflections = new Reflection[terms];
    for (int k = 0; k < terms; k++) {
      double[] column = columns[k];
      for (int i = 0; i < column.length; i++) {
        column[i] *= weight[i];
      }
      for (int earlier = 0; earlier < k; earlier++) {
        reflections[earlier].apply(column);
      }
      reflections[k] = new Reflection(column, k);
      reflections[k].apply(elevation);
    }
    return reflections;
  }

  /** The likelihood as a function of the sill, for one correlation. */
  OfSill at(Correlation correlation) {
    double[][] matrix = weighted(correlation);
    for (Reflection reflection : drift) {
      reflection.applyBothSides(matrix);
    }
    double[] rest = elevation.clone();
    Tridiagonal reduced = new Tridiagonal(matrix, terms, rest);
    return new OfSill(
        reduced.diagonal, reduced.beside, Arrays.copyOfRange(rest, terms, rest.length));
  }

  private double[][] weighted(Correlation correlation) {
    int n = weight.length;
    double[][] matrix = new double[n][n];
    for (int i = 0; i < n; i++) {
      Stopped.ifInterrupted();
      for (int j = 0; j <= i; j++) {
        matrix[i][j] = weight[i] * weight[j] * correlation.at(distance[i][j]);
        matrix[j][i] = matrix[i][j];
      }
    }
    return matrix;
  }

  /**
   * The tridiagonal covariance of one range.
   *
   * @param diagonal of the matrix
   * @param beside entries beside the diagonal; the last is not used
   * @param rest elevations in the same space
   */
  record OfSill(double[] diagonal, double[] beside, double[] rest) {

    /**
     * Minus twice the logarithm of the restricted likelihood, but for terms that depend on neither
     * sill nor range; less is likelier.
     */
    double minusTwiceLog(double sill) {
      if (rest.length == 0) {
        return 0;
      }
      double pivot = 1 + sill * diagonal[0];
      double value = rest[0];
      double sum = Math.log(pivot) + value * value / pivot;
      for (int k = 1; k < rest.length; k++) {
        double ratio = sill * beside[k - 1] / pivot;
        pivot = Math.max(1, 1 + sill * (diagonal[k] - beside[k - 1] * ratio));
        value = rest[k] - ratio * value;
        sum += Math.log(pivot) + value * value / pivot;
      }
      return sum;
    }
  }
}
