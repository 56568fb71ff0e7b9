package dev.fillplane.web.json;

import java.util.Locale;

/** How enum constants are written on the wire. */
public final class Words {

  private Words() {}

  /** The word of a constant: its name in kebab case, {@code MATERN_3_2} as {@code matern-3-2}. */
  public static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The name of a constant as a property: {@code SURFACE_LOAD} as {@code surfaceLoad}. */
  public static String property(Enum<?> constant) {
    StringBuilder name = new StringBuilder();
    for (String part : constant.name().toLowerCase(Locale.ROOT).split("_", -1)) {
      name.append(
          name.isEmpty() ? part : Character.toUpperCase(part.charAt(0)) + part.substring(1));
    }
    return name.toString();
  }
}
