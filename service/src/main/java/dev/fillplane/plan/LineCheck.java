package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.flatness.MeasuredLine;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.survey.HeightCheck;
import java.util.List;

/** Finds what of measured lines is no measurement, or contradicts itself. */
final class LineCheck {

  private static final double LARGEST_ERROR = 0.05;

  /** By what part the length on plan may differ from that of the readings; own choice. */
  private static final double LENGTH_TOLERANCE = 0.05;

  private LineCheck() {}

  static void check(List<MeasuredLine> lines, Place root, Findings findings) {
    for (int i = 0; i < lines.size(); i++) {
      MeasuredLine line = lines.get(i);
      Place place = root.at("lines").at(i);
      checkElevations(line, place.at("elevations"), findings);
      checkPlace(line, place, findings);
      checkError(line.readingError(), place.at("readingError"), findings);
    }
  }

  private static void checkElevations(MeasuredLine line, Place place, Findings findings) {
    double[] elevations = line.elevations();
    for (int i = 0; i < elevations.length; i++) {
      if (!(Math.abs(elevations[i]) <= HeightCheck.FURTHEST)) {
        findings.error(
            "elevation-too-far",
            place.at(i),
            "furthest",
            Amount.of(HeightCheck.FURTHEST, Dimension.PLAN));
      }
    }
  }

  private static void checkPlace(MeasuredLine line, Place place, Findings findings) {
    if (line.from().isPresent() != line.to().isPresent()) {
      findings.error("line-half-placed", place, "line", line.id());
    }
    if (!line.isPlaced()) {
      return;
    }
    double onPlan = line.from().orElseThrow().distance(line.to().orElseThrow());
    if (!(Math.abs(onPlan - line.length()) <= LENGTH_TOLERANCE * line.length())) {
      findings.error(
          "line-length-differs",
          place,
          "line",
          line.id(),
          "told",
          Amount.of(onPlan, Dimension.PLAN),
          "read",
          Amount.of(line.length(), Dimension.PLAN));
    }
  }

  private static void checkError(double error, Place place, Findings findings) {
    if (error > LARGEST_ERROR) {
      findings.error(
          "out-of-range",
          place,
          "name",
          "error of a reading",
          "told",
          Amount.of(error, Dimension.HEIGHT),
          "from",
          Amount.of(0, Dimension.HEIGHT),
          "to",
          Amount.of(LARGEST_ERROR, Dimension.HEIGHT));
    }
  }
}
