package dev.fillplane.render;

/** Texts of tables that are opened in spreadsheets. */
public final class CellText {

  /** The full-width signs are taken for the others by some spreadsheets. */
  private static final String OPENS_A_FORMULA = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

  private CellText() {}

  /**
   * The text in one line, without characters that no page shows, and behind an apostrophe if a
   * spreadsheet would take it for a formula.
   */
  public static String of(String text) {
    StringBuilder line = new StringBuilder(text.length());
    text.codePoints()
        .filter(c -> Markup.allowed(c) || c == '\r')
        .map(c -> c < ' ' ? ' ' : c)
        .forEach(line::appendCodePoint);
    return opensAFormula(line) ? "'" + line : line.toString();
  }

  /** Blanks and marks without width before it do not count. */
  private static boolean opensAFormula(CharSequence line) {
    return line.codePoints()
        .filter(c -> !Character.isWhitespace(c) && !Character.isSpaceChar(c) && !isFormat(c))
        .limit(1)
        .anyMatch(c -> OPENS_A_FORMULA.indexOf(c) >= 0);
  }

  private static boolean isFormat(int c) {
    return Character.getType(c) == Character.FORMAT;
  }
}
