package dev.fillplane.pour;

import java.util.List;

/** The breaks of a crew. */
record Breaks(List<Break> all) {

  /** When batches may be begun again; {@code now} if there is no break. */
  double workGoesOn(double now) {
    double end = now;
    for (int i = 0; i < all.size(); i++) {
      Break one = all.get(i);
      if (one.at() <= now && now < one.end()) {
        end = Math.max(end, one.end());
      }
    }
    return end;
  }

  boolean stop(double now) {
    return workGoesOn(now) > now;
  }
}
