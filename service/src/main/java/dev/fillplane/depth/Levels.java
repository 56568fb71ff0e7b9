package dev.fillplane.depth;

import dev.fillplane.target.Plane;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a pour is levelled to.
 *
 * @param planes of the finished pour, one for each room in the order of the rooms
 * @param groundTo least depth under the planes: floor that stands higher is ground off; empty where
 *     nothing is ground
 */
public record Levels(List<Plane> planes, OptionalDouble groundTo) {

  /** Copies the planes. */
  public Levels {
    planes = List.copyOf(planes);
  }

  /** One plane over all rooms, nothing ground. */
  public static Levels of(Plane plane, int rooms) {
    return new Levels(Collections.nCopies(rooms, plane), OptionalDouble.empty());
  }

  /** Whether all rooms lie in one plane. */
  boolean isOnePlane() {
    return planes.stream().allMatch(planes.get(0)::equals);
  }
}
