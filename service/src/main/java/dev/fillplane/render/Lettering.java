package dev.fillplane.render;

/**
 * How wide texts are, at most, in the usual sans-serif fonts. Widths follow a wide font, so that a
 * text takes no more room than reserved where another font is used.
 */
final class Lettering {

  private static final String NARROW = "iljtfrI.,:;'|!()[]/ -";
  private static final String WIDE = "mwMW@%";

  private Lettering() {}

  /** Width in px of a text of a size in px. */
  static double width(String text, double size) {
    return size * text.codePoints().mapToDouble(Lettering::em).sum();
  }

  private static double em(int c) {
    if (!Markup.allowed(c)) {
      return 0;
    }
    if (c > 0x2FF) {
      return 1.1;
    }
    if (NARROW.indexOf(c) >= 0) {
      return 0.42;
    }
    if (WIDE.indexOf(c) >= 0) {
      return 1.02;
    }
    return Character.isUpperCase(c) ? 0.78 : 0.65;
  }

  /** The first so many characters of a text, with an ellipsis where it is cut. */
  static String cut(String text, int most) {
    return text.codePointCount(0, text.length()) <= most
        ? text
        : text.substring(0, text.offsetByCodePoints(0, most - 1)).strip() + "\u2026";
  }

  /** As much of a text as fits, with an ellipsis where it is cut; empty where hardly any fits. */
  static String fit(String text, double size, double width) {
    if (width(text, size) <= width) {
      return text;
    }
    int end = text.length();
    while (end > 0 && width(text.substring(0, end), size) > width - 1.1 * size) {
      end = text.offsetByCodePoints(end, -1);
    }
    return end < 3 ? "" : text.substring(0, end).strip() + "\u2026";
  }
}
