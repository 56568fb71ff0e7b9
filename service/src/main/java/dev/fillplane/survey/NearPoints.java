package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Arrays;

/**
 * Warns where two different points stand in one place and their readings in the same setup disagree
 * by more than three deviations of their difference.
 *
 * <p>Positions are put into cells of twice the reach, in four grids that are shifted by the reach:
 * two points within the reach share a cell of at least one. In a crowded cell a point is compared
 * with its {@link #NEIGHBOURS} neighbours in the order of the readings only, which bounds the work.
 */
final class NearPoints {

  /** Points closer than this on plan are in one place. */
  static final double REACH = 0.001;

  /** Most warnings of this kind. */
  static final int WARNINGS = 100;

  private static final int NEIGHBOURS = 16;
  private static final int INDEX_BITS = 24;
  private static final int MOST_BUCKET_BITS = 24;
  private static final long INDEX = (1L << INDEX_BITS) - 1;

  private final Observations all;
  private final Findings findings;
  private final boolean[] warned;
  private int warnings;

  private NearPoints(Observations all, Findings findings) {
    this.all = all;
    this.findings = findings;
    warned = new boolean[all.count()];
  }

  /** At most one warning a reading. */
  static void check(Observations all, Findings findings) {
    NearPoints near = new NearPoints(all, findings);
    near.checkCells(0, 0);
    near.checkCells(REACH, 0);
    near.checkCells(0, REACH);
    near.checkCells(REACH, REACH);
  }

  /** Sorts the readings by cell, in the order of the request within a cell. */
  private void checkCells(double shiftX, double shiftY) {
    long[] keys = new long[all.count()];
    int placed = 0;
    for (int i = 0; i < all.count(); i++) {
      if (all.placed(i)) {
        keys[placed++] = cell(i, shiftX, shiftY) << INDEX_BITS | i;
      }
    }
    placed = keepShared(keys, placed);
    Arrays.sort(keys, 0, placed);
    for (int k = 1; k < placed; k++) {
      for (int j = k - 1; j >= 0 && j >= k - NEIGHBOURS && sameCell(keys[j], keys[k]); j--) {
        compare((int) (keys[j] & INDEX), (int) (keys[k] & INDEX));
      }
    }
  }

  /** Moves to the front the keys that may share their cell: in a wide scan few do. */
  private static int keepShared(long[] keys, int placed) {
    int bits = Math.min(MOST_BUCKET_BITS, Integer.SIZE + 3 - Integer.numberOfLeadingZeros(placed));
    byte[] met = new byte[1 << bits];
    for (int k = 0; k < placed; k++) {
      int bucket = (int) (keys[k] >>> Long.SIZE - bits);
      met[bucket] = (byte) Math.min(2, met[bucket] + 1);
    }
    int kept = 0;
    for (int k = 0; k < placed; k++) {
      if (met[(int) (keys[k] >>> Long.SIZE - bits)] > 1) {
        keys[kept++] = keys[k];
      }
    }
    return kept;
  }

  private static boolean sameCell(long one, long other) {
    return one >>> INDEX_BITS == other >>> INDEX_BITS;
  }

  /** A number of setup and cell; different cells may share it, so distances decide. */
  private long cell(int i, double shiftX, double shiftY) {
    long column = (long) Math.floor((all.x()[i] + shiftX) / (2 * REACH));
    long row = (long) Math.floor((all.y()[i] + shiftY) / (2 * REACH));
    long mixed = (column * 0x9E3779B97F4A7C15L + row) * 0xBF58476D1CE4E5B9L + all.setup()[i];
    return (mixed * 0x94D049BB133111EBL) >>> INDEX_BITS;
  }

  private void compare(int i, int j) {
    double difference = Math.abs(all.reading()[j] - all.reading()[i]);
    if (all.point()[i] == all.point()[j]
        || all.setup()[i] != all.setup()[j]
        || warned[j]
        || warnings == WARNINGS
        || !(difference > all.tolerance(all.setup()[i]))
        || Math.hypot(all.x()[j] - all.x()[i], all.y()[j] - all.y()[i]) > REACH) {
      return;
    }
    warned[j] = true;
    warnings++;
    findings.warning(
        "readings-disagree",
        all.places().apply(j),
        "point",
        all.names().name(all.point()[j]),
        "other",
        all.names().name(all.point()[i]),
        "setup",
        all.setups()[all.setup()[j]],
        "difference",
        Amount.of(difference, Dimension.HEIGHT));
  }
}
