package dev.fillplane.render;

/**
 * Colours from light (shallow) to dark (deep), computed in CIELAB: lightness L* falls in equal
 * steps from 94 to 30, b* falls with it from yellow to blue, a* bends through green. The order
 * survives a grey print by L* alone and red-green colour blindness by L* and b*. Own ramp; CIELAB
 * to sRGB by CIE 15 and IEC 61966-2-1 (D65).
 */
final class DepthRamp {

  private static final double LIGHTEST = 94;
  private static final double DARKEST = 30;
  private static final double[] WHITE = {0.95047, 1, 1.08883};

  private DepthRamp() {}

  /** The colour at a share, 0 (shallow) to 1 (deep), as {@code #rrggbb}. */
  static String colour(double share) {
    double lightness = LIGHTEST + share * (DARKEST - LIGHTEST);
    double a = (1 - share) * -6 + share * 8 - 4 * share * (1 - share) * 26;
    double b = (1 - share) * 28 + share * -38;
    return hex(lightness, a, b);
  }

  private static String hex(double lightness, double a, double b) {
    double middle = (lightness + 16) / 116;
    double x = WHITE[0] * linear(middle + a / 500);
    double y = WHITE[1] * linear(middle);
    double z = WHITE[2] * linear(middle - b / 200);
    int red = channel(3.2404542 * x - 1.5371385 * y - 0.4985314 * z);
    int green = channel(-0.9692660 * x + 1.8760108 * y + 0.0415560 * z);
    int blue = channel(0.0556434 * x - 0.2040259 * y + 1.0572252 * z);
    String digits = Integer.toHexString(0x1000000 | red << 16 | green << 8 | blue);
    return "#" + digits.substring(1);
  }

  private static double linear(double f) {
    return f > 6.0 / 29 ? f * f * f : 3 * (6.0 / 29) * (6.0 / 29) * (f - 4.0 / 29);
  }

  private static int channel(double light) {
    double value = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    return (int) Math.round(255 * Math.max(0, Math.min(1, value)));
  }
}
