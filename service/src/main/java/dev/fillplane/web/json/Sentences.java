package dev.fillplane.web.json;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The sentence of each code, with its values in the caller's units. */
public final class Sentences {

  private static final Properties SENTENCES = load();
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\w+)\\}");

  /** Sentences about how well heights were measured, or about a range: not rounded to a tape. */
  private static final Set<String> EXACT =
      Set.of(
          "out-of-range",
          "misclosure-over-limit",
          "tie-open",
          "tilt-unseen",
          "readings-disagree",
          "laser-moved",
          "floor-assumed-usual");

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

  private static String value(
      String code, String name, Map<String, Object> values, UnitSystem system) {
    Object value = values.get(name);
    if (value == null) {
      throw new IllegalStateException("the sentence of " + code + " lacks " + name);
    }
    if (!(value instanceof Amount amount)) {
      return value.toString();
    }
    boolean height = amount.dimension() == Dimension.HEIGHT;
    return height && (EXACT.contains(code) || clash(values, system))
        ? AmountText.exact(amount, system)
        : AmountText.of(amount, system);
  }

  /** Whether two different heights would read the same, as a gap just over its limit. */
  private static boolean clash(Map<String, Object> values, UnitSystem system) {
    Map<String, Double> told = new TreeMap<>();
    for (Object value : values.values()) {
      if (value instanceof Amount amount && amount.dimension() == Dimension.HEIGHT) {
        Double before = told.put(AmountText.of(amount, system), amount.si());
        if (before != null && before != amount.si()) {
          return true;
        }
      }
    }
    return false;
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
