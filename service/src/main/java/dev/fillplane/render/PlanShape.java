package dev.fillplane.render;

/**
 * One shape of a plan as a GeoJSON Feature.
 *
 * @param type of GeoJSON object
 * @param properties what it is
 * @param geometry where it lies
 */
public record PlanShape(String type, PlanShapeProperties properties, PlanShapeGeometry geometry) {

  static PlanShape of(PlanShapeProperties properties, PlanShapeGeometry geometry) {
    return new PlanShape("Feature", properties, geometry);
  }
}
