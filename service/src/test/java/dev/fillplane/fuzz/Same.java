package dev.fillplane.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/**
 * How near two plans of one floor must be.
 *
 * @param relative of areas, volumes and times
 * @param height in mm
 * @param bags by which counts may differ
 */
record Same(double relative, double height, int bags) {

  /** Nothing but the order of sums differs. */
  static final Same EXACTLY = new Same(1e-9, 1e-9, 0);

  /** Numbers lost a few digits on their way. */
  static final Same BY_ROUNDING = new Same(1e-7, 1e-6, 0);

  /** The cells lie differently on the floor, and random floors are drawn at other places. */
  static final Same BY_OTHER_CELLS = new Same(2e-3, 0.15, 1);

  private static final List<String> SIZES =
      List.of("/depth/area", "/depth/pouredArea", "/depth/volume", "/quantities/perimeterSeal");

  private static final List<String> HEIGHTS =
      List.of("/depth/maximum", "/depth/minimum", "/depth/mean");

  private static final List<String> COUNTS =
      List.of("/quantities/bags/likely", "/quantities/bags/p10", "/quantities/bags/order");

  /** What differs; empty if nothing does. */
  String broken(JsonNode one, JsonNode other) {
    return off("/target/elevation", height, one, other) + brokenButForHeights(one, other);
  }

  /** The same without the heights over the zero of the elevations. */
  String brokenButForHeights(JsonNode one, JsonNode other) {
    StringBuilder off = new StringBuilder();
    for (String size : SIZES) {
      off.append(off(size, relative * Math.abs(Plans.number(one, size)), one, other));
    }
    HEIGHTS.forEach(place -> off.append(off(place, height, one, other)));
    COUNTS.forEach(place -> off.append(off(place, bags, one, other)));
    if (bags == 0) {
      String verdict = "/pour/verdict";
      boolean same = one.at(verdict).equals(other.at(verdict));
      off.append(same ? "" : one.at(verdict) + " is " + other.at(verdict) + ". ");
    }
    return off.toString();
  }

  private static String off(String place, double allowed, JsonNode one, JsonNode other) {
    double from = Plans.number(one, place);
    double to = Plans.number(other, place);
    return Math.abs(from - to) <= allowed ? "" : "%s: %s is %s. ".formatted(place, from, to);
  }
}
