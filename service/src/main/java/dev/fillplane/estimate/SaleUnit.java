package dev.fillplane.estimate;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A unit in which something is sold, with its UCUM code. Of those that fit an item the first is the
 * usual one. Factors are those of {@link Dimension} where it has the unit.
 */
public enum SaleUnit {
  BAG("{bag}", Sold.BAGS, 1, 0),
  PIECE("1", Sold.PIECES, 1, 0),
  METRE("m", Sold.LENGTH, UnitSystem.METRIC, 1),
  FOOT("[ft_i]", Sold.LENGTH, UnitSystem.US, Dimension.PLAN.unit(UnitSystem.US).factor()),
  SQUARE_METRE("m2", Sold.AREA, UnitSystem.METRIC, 1),
  SQUARE_FOOT("[sft_i]", Sold.AREA, UnitSystem.US, Dimension.AREA.unit(UnitSystem.US).factor()),
  LITRE("L", Sold.VOLUME, UnitSystem.METRIC, 1e-3),
  CUBIC_METRE("m3", Sold.VOLUME, UnitSystem.METRIC, 1),
  QUART("[qt_us]", Sold.VOLUME, UnitSystem.US, Dimension.LIQUID.unit(UnitSystem.US).factor()),
  GALLON("[gal_us]", Sold.VOLUME, UnitSystem.US, 4 * QUART.factor),
  CUBIC_FOOT("[cft_i]", Sold.VOLUME, UnitSystem.US, Dimension.FILL.unit(UnitSystem.US).factor()),
  KILOGRAM("kg", Sold.MASS, UnitSystem.METRIC, 1),
  POUND("[lb_av]", Sold.MASS, UnitSystem.US, Dimension.MASS.unit(UnitSystem.US).factor()),
  HOUR("h", Sold.WORK, 3600, 2),
  DAY("d", Sold.HIRE, 1, 1);

  private static final int MEASURED_DECIMALS = 2;

  private final String code;
  private final Sold sold;
  private final Optional<UnitSystem> system;
  private final double factor;
  private final int decimals;

  SaleUnit(String code, Sold sold, UnitSystem system, double factor) {
    this(code, sold, Optional.of(system), factor, MEASURED_DECIMALS);
  }

  SaleUnit(String code, Sold sold, double factor, int decimals) {
    this(code, sold, Optional.empty(), factor, decimals);
  }

  SaleUnit(String code, Sold sold, Optional<UnitSystem> system, double factor, int decimals) {
    this.code = code;
    this.sold = sold;
    this.system = system;
    this.factor = factor;
    this.decimals = decimals;
  }

  /** Its case-sensitive UCUM code; 1 for pieces. */
  public String code() {
    return code;
  }

  /** How many of the unit inside make one of this. */
  double factor() {
    return factor;
  }

  /** To how many decimals a quantity in it is rounded up. */
  int decimals() {
    return decimals;
  }

  boolean isOf(UnitSystem units) {
    return system.isEmpty() || system.get() == units;
  }

  /** Those in which something is sold, of either system. */
  static List<SaleUnit> of(Sold sold) {
    return Arrays.stream(values()).filter(unit -> unit.sold == sold).toList();
  }

  /** Those in which something is sold to callers of {@code units}, the usual one first. */
  static List<SaleUnit> of(Sold sold, UnitSystem units) {
    return of(sold).stream().filter(unit -> unit.isOf(units)).toList();
  }
}
