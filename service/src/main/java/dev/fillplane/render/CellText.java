package dev.fillplane.render;

/** Texts of tables that are opened in spreadsheets. */
public final class CellText {

  /** The full-width signs are taken for the others by some spreadsheets. */
  private static final String OPENS_A_FORMULA = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

  private CellText() {}

  /** The text, behind an apostrophe if a spreadsheet would take it for a formula. */
  public static String of(String text) {
    String told = text.stripLeading();
    boolean formula = !told.isEmpty() && OPENS_A_FORMULA.indexOf(told.charAt(0)) >= 0;
    return formula ? "'" + text : text;
  }
}
