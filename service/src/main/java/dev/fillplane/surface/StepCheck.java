package dev.fillplane.surface;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.locationtech.jts.geom.Polygon;

/**
 * Which steps the readings can tell: those with readings on both sides, so placed that the jump is
 * not the same as a lean of the floor or as another step.
 */
public final class StepCheck {

  /** Smallest singular value in parts of the largest; under it a jump is told by chance alone. */
  private static final double LEAST = 1e-3;

  private StepCheck() {}

  /**
   * The wish with the steps that can be told; a warning for each that is left out, an error for one
   * without length. Where the floor is not kriged none of them is used, so all are kept, which
   * spares singular values of a matrix with a row for each of a million readings.
   *
   * @param spots that fix a plane
   * @param place of the steps
   */
  public static SurfaceWish told(
      SurfaceWish wish, Spots spots, List<Polygon> rooms, Place place, Findings findings) {
    List<Step> kept = new ArrayList<>();
    boolean kriged = FloorFit.kriges(spots, wish);
    for (int i = 0; i < wish.steps().size(); i++) {
      Step step = wish.steps().get(i);
      if (!(step.length() > Spacing.SAME_PLACE)) {
        findings.error("step-without-length", place.at(i));
        continue;
      }
      kept.add(step);
      if (kriged && !told(wish.drift(), spots, kept, rooms)) {
        kept.remove(kept.size() - 1);
        findings.warning("step-without-readings", place.at(i));
      }
    }
    return wish.with(kept);
  }

  private static boolean told(Drift drift, Spots spots, List<Step> steps, List<Polygon> rooms) {
    LocalSpots local = LocalSpots.of(spots);
    Spacing spacing = Spacing.of(local.x(), local.y());
    Drift used = spacing.places() <= 3 ? Drift.LINEAR : drift;
    double[][] columns =
        DriftTerms.of(used, spacing.extent(), steps, rooms, local).columns(local.x(), local.y());
    if (columns.length > spacing.places()) {
      return false;
    }
    var values = new SingularValueDecomposition(new Array2DRowRealMatrix(columns));
    return values.getInverseConditionNumber() > LEAST;
  }
}
