package dev.fillplane.render;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Times as people on site keep them. */
final class Minutes {

  private static final double MINUTE = 60;

  private Minutes() {}

  /** Minutes to a tenth. */
  static String tenth(double seconds) {
    double minutes = Dimension.TIME.unit(UnitSystem.METRIC).fromSi(seconds);
    return BigDecimal.valueOf(minutes).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }

  /** Whole minutes that there surely are, with their unit. */
  static String whole(double seconds) {
    return (long) Math.floor(Math.max(0, seconds) / MINUTE + 1e-6) + " min";
  }

  /** A long time: hours and minutes, to the next minute. */
  static String hours(double seconds) {
    long minutes = Math.round(seconds / MINUTE);
    return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
  }
}
