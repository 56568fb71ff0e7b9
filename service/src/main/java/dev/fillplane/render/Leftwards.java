package dev.fillplane.render;

import com.openhtmltopdf.bidi.BidiReorderer;
import java.text.Bidi;
import java.text.BreakIterator;
import java.text.Normalizer;
import java.util.Locale;

/** Writes what is read from right to left: letters in their joined forms, the last one first. */
final class Leftwards implements BidiReorderer {

  private static final String BRACKETS = "()[]{}<>\u00AB\u00BB";

  @Override
  public String reorderRTLTextToLTR(String text) {
    Bidi bidi = new Bidi(text, Bidi.DIRECTION_RIGHT_TO_LEFT);
    StringBuilder shown = new StringBuilder(text.length());
    for (int i = bidi.getRunCount() - 1; i >= 0; i--) {
      String part = text.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
      shown.append(bidi.getRunLevel(i) % 2 == 1 ? turned(part) : part);
    }
    return shown.toString();
  }

  private static String turned(String text) {
    BreakIterator letters = BreakIterator.getCharacterInstance(Locale.ROOT);
    letters.setText(text);
    StringBuilder turned = new StringBuilder(text.length());
    int end = letters.last();
    for (int start = letters.previous(); start != BreakIterator.DONE; start = letters.previous()) {
      turned.append(mirrored(text.substring(start, end)));
      end = start;
    }
    return turned.toString();
  }

  private static String mirrored(String letter) {
    int at = letter.length() == 1 ? BRACKETS.indexOf(letter.charAt(0)) : -1;
    return at < 0 ? letter : String.valueOf(BRACKETS.charAt(at ^ 1));
  }

  @Override
  public String shapeText(String text) {
    return ArabicForms.join(text);
  }

  /** The plain letter of a form that a font does not have. */
  @Override
  public String deshapeText(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC);
  }

  @Override
  public boolean isLiveImplementation() {
    return true;
  }
}
