package dev.fillplane.web.json;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The sentence of each code, with its values in the caller's units. */
public final class Sentences {

  private static final Properties SENTENCES = load();
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\w+)\\}");

  private Sentences() {}

  /** Every code that has a sentence. */
  public static Set<String> codes() {
    return SENTENCES.stringPropertyNames();
  }

  /**
   * The sentence of {@code code}.
   *
   * @param values what its placeholders stand for
   * @throws IllegalStateException if there is no such sentence, or it mentions a value that is not
   *     there
   */
  public static String of(String code, Map<String, Object> values, UnitSystem system) {
    String sentence = SENTENCES.getProperty(code);
    if (sentence == null) {
      throw new IllegalStateException("no sentence for " + code);
    }
    return PLACEHOLDER
        .matcher(sentence)
        .replaceAll(match -> Matcher.quoteReplacement(value(code, match.group(1), values, system)));
  }

  /** An amount as people read it: rounded to what can be told apart on site, with its unit. */
  public static String text(Amount amount, UnitSystem system) {
    int decimals = decimals(amount, system);
    BigDecimal number =
        BigDecimal.valueOf(amount.in(system)).setScale(decimals, RoundingMode.HALF_UP);
    return plain(number) + " " + sign(amount.dimension(), system);
  }

  private static String value(
      String code, String name, Map<String, Object> values, UnitSystem system) {
    Object value = values.get(name);
    if (value == null) {
      throw new IllegalStateException("the sentence of " + code + " lacks " + name);
    }
    return value instanceof Amount amount ? text(amount, system) : value.toString();
  }

  /** Without zeros at the end of its decimals. */
  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  private static int decimals(Amount amount, UnitSystem system) {
    double size = Math.abs(amount.in(system));
    int usual = decimals(amount.dimension(), system);
    return switch (amount.dimension()) {
      case HEIGHT -> size >= 100 ? 0 : size >= 10 ? 1 : usual;
      case AREA -> size >= 100 ? 0 : size < 1 ? 2 : usual;
      default -> size >= 100 ? 0 : usual;
    };
  }

  private static int decimals(Dimension dimension, UnitSystem system) {
    boolean metric = system == UnitSystem.METRIC;
    return switch (dimension) {
      case HEIGHT, FILL, LIQUID, SLOPE -> metric ? 1 : 2;
      case PLAN, EVAPORATION, HEIGHT_VARIANCE, FILL_PRICE -> 2;
      case SURFACE_LOAD -> metric ? 2 : 1;
      case AREA, MASS, COVERAGE, TIME, TEMPERATURE_DIFFERENCE, MOLAR_ENERGY -> 1;
      case TEMPERATURE, DENSITY, AIRSPEED, AIRFLOW, CONCENTRATION, ANGLE -> 0;
    };
  }

  private static String sign(Dimension dimension, UnitSystem system) {
    boolean metric = system == UnitSystem.METRIC;
    return switch (dimension) {
      case PLAN -> metric ? "m" : "ft";
      case HEIGHT -> metric ? "mm" : "in";
      case HEIGHT_VARIANCE -> metric ? "mm2" : "in2";
      case SLOPE -> metric ? "mm per m" : "in per ft";
      case AREA -> metric ? "m2" : "sq ft";
      case FILL -> metric ? "L" : "cu ft";
      case FILL_PRICE -> metric ? "per L" : "per cu ft";
      case LIQUID -> metric ? "L" : "qt";
      case COVERAGE -> metric ? "m2 per L" : "sq ft per gal";
      case MASS -> metric ? "kg" : "lb";
      case DENSITY -> metric ? "kg per m3" : "lb per cu ft";
      case TEMPERATURE -> metric ? "C" : "F";
      case TEMPERATURE_DIFFERENCE -> metric ? "K" : "F";
      case AIRSPEED -> metric ? "km/h" : "mph";
      case AIRFLOW -> metric ? "m3/h" : "cfm";
      case EVAPORATION -> metric ? "kg per m2 and hour" : "lb per sq ft and hour";
      case SURFACE_LOAD -> metric ? "kPa" : "psf";
      case CONCENTRATION -> "ug per m3";
      case MOLAR_ENERGY -> "kJ per mol";
      case TIME -> "min";
      case ANGLE -> "deg";
    };
  }

  private static Properties load() {
    try (InputStream in =
        Sentences.class.getResourceAsStream("/dev/fillplane/web/sentences.properties")) {
      Properties sentences = new Properties();
      sentences.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      return sentences;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
