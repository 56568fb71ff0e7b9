package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;

/**
 * Warns where one point was read twice in one setup and the readings disagree by more than three
 * deviations of their difference: the laser was moved or bumped in between.
 */
final class RepeatedReadings {

  private final Observations all;
  private final Findings findings;

  private RepeatedReadings(Observations all, Findings findings) {
    this.all = all;
    this.findings = findings;
  }

  /** One warning a point and setup, at the later of the two readings that are furthest apart. */
  static void check(Observations all, Findings findings) {
    new RepeatedReadings(all, findings).checkSetups();
  }

  /** Readings of one setup follow each other, so its extremes of a point are kept meanwhile. */
  private void checkSetups() {
    int[] lowest = new int[all.names().count()];
    int[] highest = new int[all.names().count()];
    int from = 0;
    while (from < all.count()) {
      int to = all.endOfSetup(from);
      for (int i = from; i < to; i++) {
        lowest[all.point()[i]] = i;
        highest[all.point()[i]] = i;
      }
      for (int i = from; i < to; i++) {
        int point = all.point()[i];
        lowest[point] = all.reading()[i] < all.reading()[lowest[point]] ? i : lowest[point];
        highest[point] = all.reading()[i] > all.reading()[highest[point]] ? i : highest[point];
      }
      for (int i = from; i < to; i++) {
        int point = all.point()[i];
        if (i == Math.max(lowest[point], highest[point])) {
          compare(lowest[point], highest[point]);
        }
      }
      from = to;
    }
  }

  private void compare(int low, int high) {
    double difference = all.reading()[high] - all.reading()[low];
    int setup = all.setup()[low];
    if (difference > all.tolerance(setup)) {
      findings.warning(
          "laser-moved",
          all.places().apply(Math.max(low, high)).at("reading"),
          "point",
          all.names().name(all.point()[low]),
          "setup",
          all.setups()[setup],
          "difference",
          Amount.of(difference, Dimension.HEIGHT));
    }
  }
}
