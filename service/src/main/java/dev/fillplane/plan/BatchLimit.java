package dev.fillplane.plan;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;

/** How many batches a pour may take: each is planned and answered singly. */
public final class BatchLimit {

  /** More are no pour from barrels. */
  public static final int MOST = 50_000;

  private BatchLimit() {}

  /** Notes an error if {@code volume} takes more batches of {@code batch} m3 than {@link #MOST}. */
  static void check(double volume, double batch, Place place, Findings findings) {
    if (volume > MOST * batch) {
      findings.error("too-many-batches", place, "most", MOST);
    }
  }
}
