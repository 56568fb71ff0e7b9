package dev.fillplane.render;

import dev.fillplane.quantity.UnitSystem;

/** Sizes of paper that sheets are printed on. */
public enum Paper {
  /** ISO 216. */
  A4("A4", 210, 297),
  /** 8 1/2 by 11 in. */
  LETTER("letter", 215.9, 279.4);

  static final String FONTS = "'DejaVu Sans', Verdana, Arial, 'WenQuanYi Micro Hei', sans-serif";

  /** Free on three sides, mm. */
  private static final double MARGIN = 12;

  /** Free below, with the foot in it, mm. */
  private static final double FOOT = 20;

  private final String css;
  private final double width;
  private final double height;

  Paper(String css, double width, double height) {
    this.css = css;
    this.width = width;
    this.height = height;
  }

  /** What is in the copier where these units are used. */
  public static Paper usual(UnitSystem units) {
    return units == UnitSystem.US ? LETTER : A4;
  }

  /** Its name in a style sheet. */
  String css() {
    return css;
  }

  /** Width to print on, mm. */
  double across() {
    return width - 2 * MARGIN;
  }

  /** Height to print on, mm. */
  double down() {
    return height - MARGIN - FOOT;
  }

  /** Width to print on where the paper is turned, mm. */
  double turnedAcross() {
    return height - 2 * MARGIN;
  }

  /** Height to print on where the paper is turned, mm. */
  double turnedDown() {
    return width - MARGIN - FOOT;
  }
}
