package dev.fillplane.render;

/**
 * A page as the fonts of a sheet can write it: a letter that none of them has becomes a box, marks
 * that only join or vary letters around it are left out.
 *
 * @param text the page
 * @param isWhole whether every letter is there
 * @param isEastAsian whether it takes the font for Chinese, Japanese and Korean
 */
record Written(String text, boolean isWhole, boolean isEastAsian) {

  /** Stands for a letter. */
  static final String BOX = "\u25AF";

  private static final int LAST_OF_ASCII = 0x7E;

  static Written of(String page) {
    StringBuilder text = new StringBuilder(page.length());
    boolean whole = true;
    boolean eastAsian = false;
    for (int i = 0; i < page.length(); i += Character.charCount(page.codePointAt(i))) {
      int letter = page.codePointAt(i);
      if (letter <= LAST_OF_ASCII || isHeld(letter)) {
        text.appendCodePoint(letter);
      } else if (SheetFonts.holdsEastAsian(letter)) {
        text.appendCodePoint(letter);
        eastAsian = true;
      } else if (stands(letter)) {
        text.append(BOX);
        whole = false;
      }
    }
    return new Written(text.toString(), whole, eastAsian);
  }

  private static boolean isHeld(int letter) {
    return Character.getType(letter) != Character.FORMAT && SheetFonts.holds(letter);
  }

  /** Whether it is seen by itself. */
  private static boolean stands(int letter) {
    return switch (Character.getType(letter)) {
      case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> false;
      default -> true;
    };
  }
}
