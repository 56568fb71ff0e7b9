package dev.fillplane.render;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The forms of Arabic letters as they join with their neighbours (The Unicode Standard, section
 * 9.2), written with the presentation forms of Unicode, which list for each letter its isolated and
 * final form and, where it joins on both sides, its initial and medial form, in this order.
 */
final class ArabicForms {

  private static final int ISOLATED = 0;
  private static final int FINAL = 1;
  private static final int INITIAL = 2;
  private static final int MEDIAL = 3;
  private static final int BOTH_SIDES = 4;
  private static final String LAM = "\u0644";
  private static final String STRETCH = "\u0640";

  /** By letter, or by lam with an alef. */
  private static final Map<String, List<Character>> FORMS = forms();

  private ArabicForms() {}

  private static Map<String, List<Character>> forms() {
    Map<String, List<Character>> forms = new TreeMap<>();
    // The last two letters of the first block before the gap are forms of another language's
    // letter.
    add(forms, '\uFB50', '\uFBE7');
    add(forms, '\uFBFC', '\uFBFF');
    add(forms, '\uFE80', '\uFEFC');
    return forms;
  }

  private static void add(Map<String, List<Character>> forms, char first, char last) {
    for (char form = first; form <= last; form++) {
      String plain = Normalizer.normalize(String.valueOf(form), Normalizer.Form.NFKC);
      if (plain.length() == 1 || plain.startsWith(LAM)) {
        forms.computeIfAbsent(plain, letter -> new ArrayList<>()).add(form);
      }
    }
  }

  /** The same text with its Arabic letters in their forms. */
  static String join(String text) {
    StringBuilder joined = new StringBuilder(text.length());
    boolean open = false;
    for (int i = 0; i < text.length(); i++) {
      String letter = text.substring(i, i + 1);
      String pair = i + 1 < text.length() ? text.substring(i, i + 2) : letter;
      if (isMark(text.charAt(i))) {
        joined.append(letter);
      } else if (pair.startsWith(LAM) && pair.length() == 2 && FORMS.containsKey(pair)) {
        joined.append(FORMS.get(pair).get(open ? FINAL : ISOLATED));
        open = false;
        i++;
      } else {
        boolean on = joinsOn(letter) && joinsBack(next(text, i));
        joined.append(form(letter, open, on));
        open = joinsOn(letter);
      }
    }
    return joined.toString();
  }

  private static Object form(String letter, boolean back, boolean on) {
    List<Character> forms = FORMS.get(letter);
    if (forms == null) {
      return letter;
    }
    int form = back ? on ? MEDIAL : FINAL : on ? INITIAL : ISOLATED;
    return form < forms.size() ? forms.get(form) : forms.get(ISOLATED);
  }

  private static boolean joinsOn(String letter) {
    return letter.equals(STRETCH) || forms(letter) >= BOTH_SIDES;
  }

  private static boolean joinsBack(String letter) {
    return letter.equals(STRETCH) || forms(letter) > FINAL;
  }

  private static int forms(String letter) {
    return FORMS.getOrDefault(letter, List.of()).size();
  }

  /** The next letter that is no mark over this one. */
  private static String next(String text, int at) {
    int next = at + 1;
    while (next < text.length() && isMark(text.charAt(next))) {
      next++;
    }
    return next < text.length() ? text.substring(next, next + 1) : "";
  }

  private static boolean isMark(char c) {
    return Character.getType(c) == Character.NON_SPACING_MARK;
  }
}
