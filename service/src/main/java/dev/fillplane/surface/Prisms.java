package dev.fillplane.surface;

/**
 * What lies between a plane and the floor, over a part of the rooms.
 *
 * @param area the part on plan
 * @param fillArea where the floor is below the plane
 * @param fillVolume volume there
 * @param cutArea where the floor stands above the plane
 * @param cutVolume volume there
 */
public record Prisms(
    double area, double fillArea, double fillVolume, double cutArea, double cutVolume) {

  /** Nothing. */
  public static final Prisms NONE = new Prisms(0, 0, 0, 0, 0);

  /** This and another part together. */
  public Prisms plus(Prisms other) {
    return new Prisms(
        area + other.area,
        fillArea + other.fillArea,
        fillVolume + other.fillVolume,
        cutArea + other.cutArea,
        cutVolume + other.cutVolume);
  }
}
