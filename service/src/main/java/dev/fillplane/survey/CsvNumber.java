package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people write it: {@code 1208.5}, {@code 1208,5} where the comma is free, and inches
 * as {@code 2 3/8}, {@code 2-3/8}, {@code 3/8} or {@code 2.375}, with or without the sign for
 * inches behind. At most 12 digits before and 12 behind the point.
 */
final class CsvNumber {

  private static final Pattern DECIMAL =
      Pattern.compile("([+-]?(?:\\d{1,12}(?:[.,]\\d{0,12})?|[.,]\\d{1,12}))");
  private static final Pattern FRACTION =
      Pattern.compile("([+-]?)(?:(\\d{1,6})(?: +| ?- ?))?(\\d{1,4}) ?/ ?(\\d{1,4})");
  private static final String INCH_SIGNS = "\"\u2033\u201D";

  private final UnitSystem units;
  private final boolean decimalComma;

  CsvNumber(UnitSystem units, boolean decimalComma) {
    this.units = units;
    this.decimalComma = decimalComma;
  }

  /** The number in SI; empty if {@code text} is none. */
  OptionalDouble parse(String text, Dimension dimension) {
    String bare = text.replace('\u2212', '-').replace('\u00A0', ' ');
    OptionalDouble told = isInches(dimension) ? inches(bare) : decimal(bare);
    return told.isEmpty()
        ? told
        : OptionalDouble.of(dimension.unit(units).toSi(told.getAsDouble()));
  }

  /** Whether {@code text} is a fraction where none may be: only heights in inches have them. */
  boolean isFractionElsewhere(String text, Dimension dimension) {
    return !isInches(dimension) && FRACTION.matcher(withoutInchSign(text)).matches();
  }

  private boolean isInches(Dimension dimension) {
    return units == UnitSystem.US && dimension == Dimension.HEIGHT;
  }

  private OptionalDouble inches(String text) {
    String bare = withoutInchSign(text);
    Matcher fraction = FRACTION.matcher(bare);
    return fraction.matches() ? fraction(fraction) : decimal(bare);
  }

  private static String withoutInchSign(String text) {
    int last = text.length() - 1;
    return last > 0 && INCH_SIGNS.indexOf(text.charAt(last)) >= 0
        ? text.substring(0, last).strip()
        : text;
  }

  /** Empty for a division by zero and for a fraction of one or more behind whole inches. */
  private static OptionalDouble fraction(Matcher told) {
    int whole = told.group(2) == null ? 0 : Integer.parseInt(told.group(2));
    int numerator = Integer.parseInt(told.group(3));
    int denominator = Integer.parseInt(told.group(4));
    if (denominator == 0 || (told.group(2) != null && numerator >= denominator)) {
      return OptionalDouble.empty();
    }
    double value = whole + (double) numerator / denominator;
    return OptionalDouble.of(told.group(1).equals("-") ? -value : value);
  }

  private OptionalDouble decimal(String text) {
    boolean comma = text.indexOf(',') >= 0;
    return DECIMAL.matcher(text).matches() && (!comma || decimalComma)
        ? OptionalDouble.of(Double.parseDouble(text.replace(',', '.')))
        : OptionalDouble.empty();
  }
}
