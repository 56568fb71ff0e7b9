package dev.fillplane.surface;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.util.Optional;

/**
 * Whether measured spots fix a plane, which any surface needs: at least 3 of them, not all on one
 * line. On one line means that their deviation across it is under a thousandth of that along it, or
 * under 1 mm.
 */
public final class SpotsCheck {

  private static final int LEAST_COUNT = 3;
  private static final double LEAST_WIDTH = 1e-3;
  private static final double LEAST_WIDTH_PER_LENGTH = 1e-3;

  private SpotsCheck() {}

  /** Notes as an error at {@code place} if no surface can be laid through {@code spots}. */
  public static void check(Spots spots, Place place, Findings findings) {
    if (spots.count() < LEAST_COUNT) {
      findings.error("too-few-readings", place, "count", spots.count());
    } else if (onALine(spots)) {
      findings.error("readings-on-a-line", place);
    }
  }

  /** The code of what {@link #check} would note. */
  public static Optional<String> unfit(Spots spots) {
    Findings findings = new Findings();
    check(spots, Place.root(), findings);
    return findings.errors().stream().map(finding -> finding.code()).findFirst();
  }

  private static boolean onALine(Spots spots) {
    Box box = Box.of(spots.x(), spots.y());
    int count = spots.count();
    double middleX = 0;
    double middleY = 0;
    double xx = 0;
    double yy = 0;
    double xy = 0;
    for (int i = 0; i < count; i++) {
      double x = spots.x()[i] - box.middleX();
      double y = spots.y()[i] - box.middleY();
      middleX += x;
      middleY += y;
      xx += x * x;
      yy += y * y;
      xy += x * y;
    }
    xx -= middleX * middleX / count;
    yy -= middleY * middleY / count;
    xy -= middleX * middleY / count;
    double along = (xx + yy + Math.hypot(xx - yy, 2 * xy)) / 2;
    double across = along > 0 ? Math.max(0, (xx * yy - xy * xy) / along) : 0;
    double width = Math.sqrt(across / count);
    double length = Math.sqrt(along / count);
    return width <= Math.max(LEAST_WIDTH, LEAST_WIDTH_PER_LENGTH * length);
  }
}
