package dev.fillplane.plan;

import dev.fillplane.survey.Elevations;

/** How much of an adjusted survey an answer shows. */
final class Surveys {

  /** A survey with more points than this is answered without them. */
  static final int POINTS_SHOWN = 2_000;

  private Surveys() {}

  static Elevations brief(Elevations elevations) {
    return elevations.points().size() <= POINTS_SHOWN ? elevations : elevations.withoutPoints();
  }
}
