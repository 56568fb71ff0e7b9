package dev.fillplane.trace;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;

/** Whether a list of what other systems say of a trace is written as the standard wants it. */
final class TraceState {

  private static final int MOST_MEMBERS = 32;
  private static final int MOST_SIGNS = 512;
  private static final Pattern KEY =
      Pattern.compile(
          "[a-z0-9][a-z0-9_*/-]{0,240}@[a-z][a-z0-9_*/-]{0,13}|[a-z][a-z0-9_*/-]{0,255}");
  private static final Pattern VALUE =
      Pattern.compile(
          "[\\x20-\\x2b\\x2d-\\x3c\\x3e-\\x7e]{0,255}[\\x21-\\x2b\\x2d-\\x3c\\x3e-\\x7e]");

  private TraceState() {}

  /**
   * Section 3.3: members {@code key=value} with commas, no key twice. The standard lets who hands
   * it on stop at 512 signs; a longer list is not handed on here.
   */
  static boolean proper(String told) {
    String[] members = told.split(",", -1);
    if (told.length() > MOST_SIGNS || members.length > MOST_MEMBERS) {
      return false;
    }
    Set<String> keys = new HashSet<>();
    for (String member : members) {
      String[] parts = member.strip().split("=", 2);
      boolean empty = parts.length == 1 && parts[0].isEmpty();
      if (!empty && !(parts.length == 2 && proper(parts[0], parts[1]) && keys.add(parts[0]))) {
        return false;
      }
    }
    return !keys.isEmpty();
  }

  private static boolean proper(String key, String value) {
    return KEY.matcher(key).matches() && VALUE.matcher(value).matches();
  }
}
