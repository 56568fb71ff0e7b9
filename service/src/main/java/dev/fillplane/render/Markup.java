package dev.fillplane.render;

/**
 * Writes elements of SVG or HTML one after the other. Attributes come as pairs of name and value.
 */
final class Markup {

  private final StringBuilder out = new StringBuilder();

  /** Starts an element. */
  Markup open(String name, Object... attributes) {
    return start(name, attributes, ">");
  }

  /** An element without content. */
  Markup leaf(String name, Object... attributes) {
    return start(name, attributes, "/>");
  }

  /** Ends an element. */
  Markup close(String name) {
    out.append("</").append(name).append(">\n");
    return this;
  }

  /** An element that holds a text only. */
  Markup text(String name, String text, Object... attributes) {
    start(name, attributes, ">");
    escape(text);
    return close(name);
  }

  /**
   * A style sheet of ours, which a page does not escape.
   *
   * @throws IllegalArgumentException if it could be taken for markup
   */
  Markup style(String css) {
    if (css.contains("<") || css.contains("&")) {
      throw new IllegalArgumentException("a style sheet with markup");
    }
    out.append("<style>").append(css).append("</style>\n");
    return this;
  }

  /** All that {@code other} wrote. */
  Markup add(Markup other) {
    out.append(other.out);
    return this;
  }

  private Markup start(String name, Object[] attributes, String end) {
    out.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"");
      if (attributes[i + 1] instanceof Number n) {
        out.append(number(n.doubleValue()));
      } else {
        escape(attributes[i + 1].toString());
      }
      out.append('"');
    }
    out.append(end);
    return this;
  }

  /**
   * A number with at most two decimals, the same everywhere.
   *
   * @throws IllegalArgumentException if it is not finite
   */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("not a number: " + value);
    }
    long hundredths = Math.round(value * 100);
    String digits = Long.toString(Math.abs(hundredths) / 100);
    long rest = Math.abs(hundredths) % 100;
    if (rest > 0) {
      digits += rest % 10 == 0 ? "." + rest / 10 : (rest < 10 ? ".0" : ".") + rest;
    }
    return hundredths < 0 ? "-" + digits : digits;
  }

  private void escape(String text) {
    text.codePoints().filter(Markup::allowed).forEach(this::escape);
  }

  /** The text without what is not allowed in it. */
  static String plain(String text) {
    return text.codePoints()
        .filter(Markup::allowed)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  /** Characters of XML 1.0, without those that only turn the direction of what follows. */
  static boolean allowed(int c) {
    boolean xml =
        c == '\t'
            || c == '\n'
            || (c >= 0x20 && c < 0xD800)
            || (c >= 0xE000 && c < 0xFFFE)
            || c >= 0x10000;
    boolean control = c >= 0x7F && c < 0xA0;
    boolean turns =
        c == 0x200E
            || c == 0x200F
            || (c >= 0x202A && c <= 0x202E)
            || (c >= 0x2066 && c <= 0x2069)
            || c == 0x061C;
    return xml && !control && !turns;
  }

  private void escape(int c) {
    switch (c) {
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '&' -> out.append("&amp;");
      case '"' -> out.append("&quot;");
      case '\'' -> out.append("&#39;");
      default -> out.appendCodePoint(c);
    }
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
