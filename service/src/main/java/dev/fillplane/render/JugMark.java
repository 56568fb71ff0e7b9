package dev.fillplane.render;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * The mark of a measuring jug to fill to: the coarsest of those on a jug that is off by at most 1 %
 * of the water. Sheets allow some 2 % or more either way (common practice, no source), so that the
 * mark stays inside.
 */
final class JugMark {

  private static final BigDecimal OFF_BY = new BigDecimal("0.01");

  /** Litres. */
  private static final List<BigDecimal> METRIC =
      List.of(new BigDecimal("0.1"), new BigDecimal("0.05"), new BigDecimal("0.01"));

  /** Quarts: a cup, half a cup, a fluid ounce. */
  private static final List<BigDecimal> US =
      List.of(new BigDecimal("0.25"), new BigDecimal("0.125"), new BigDecimal("0.03125"));

  private JugMark() {}

  /** The mark in litres or US quarts; the finest mark where none is near enough. */
  static BigDecimal of(double volume, UnitSystem units) {
    BigDecimal told = BigDecimal.valueOf(Dimension.LIQUID.unit(units).fromSi(volume));
    BigDecimal filled = BigDecimal.ZERO;
    for (BigDecimal mark : units == UnitSystem.METRIC ? METRIC : US) {
      filled = told.divide(mark, 0, RoundingMode.HALF_UP).multiply(mark);
      if (filled.subtract(told).abs().compareTo(told.multiply(OFF_BY)) <= 0) {
        break;
      }
    }
    BigDecimal bare = filled.stripTrailingZeros();
    return bare.setScale(Math.max(1, bare.scale()));
  }
}
