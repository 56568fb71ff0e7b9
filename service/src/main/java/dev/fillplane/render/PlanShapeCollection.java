package dev.fillplane.render;

import java.util.List;

/**
 * The shapes of a plan as a GeoJSON FeatureCollection (RFC 7946).
 *
 * @param type of GeoJSON object
 * @param arrangement what the coordinates are, since they are not geographic
 * @param features the shapes, kind after kind
 */
public record PlanShapeCollection(String type, String arrangement, List<PlanShape> features) {

  private static final String ARRANGEMENT =
      "Local grid of the caller, x to the right and y up on plan, in the unit of plan; by prior"
          + " arrangement (RFC 7946, section 4), not geographic.";

  /** Copies the list. */
  public PlanShapeCollection {
    features = List.copyOf(features);
  }

  static PlanShapeCollection of(List<PlanShape> features) {
    return new PlanShapeCollection("FeatureCollection", ARRANGEMENT, features);
  }
}
