package dev.fillplane.surface;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * Lays a floor through readings by the method that was asked for: kriging of up to {@link
 * #MOST_KRIGED} readings unless told, natural neighbours of more.
 */
public final class FloorFit {

  /** Readings that are kriged at most; beyond, its time grows too long. */
  public static final int MOST_KRIGED = 2_000;

  private FloorFit() {}

  /**
   * The floor through {@code spots}, which pass {@link SpotsCheck}.
   *
   * @param rooms that steps are limited to
   * @param place of the wish in the request
   * @throws dev.fillplane.finding.FindingsException if {@code findings} has errors, from here or
   *     from before
   */
  public static FittedSurface fit(
      Spots spots, SurfaceWish wish, List<Polygon> rooms, Place place, Findings findings) {
    Method method = method(spots, wish);
    if (method == Method.KRIGING && spots.count() > MOST_KRIGED) {
      findings.error(
          "too-many-to-krige", place.at("method"), "count", spots.count(), "most", MOST_KRIGED);
    }
    findings.throwIfErrors();
    if (method == Method.KRIGING) {
      return KrigedSurface.fit(spots, wish, rooms);
    }
    if (wish.method().isEmpty()) {
      findings.warning(
          "natural-neighbours-chosen", place, "count", spots.count(), "most", MOST_KRIGED);
    }
    if (wish.variogram().isPresent()) {
      findings.warning("variogram-not-used", place.at("variogram"));
    }
    if (!wish.steps().isEmpty()) {
      findings.warning("steps-not-used", place.at("steps"));
    }
    DenseSurface floor = DenseSurface.fit(spots, method);
    if (floor.summary().method() != method) {
      findings.warning("triangles-for-neighbours", place.at("method"));
    }
    return floor;
  }

  private static Method method(Spots spots, SurfaceWish wish) {
    boolean many = spots.count() > MOST_KRIGED;
    return wish.method().orElse(many ? Method.NATURAL_NEIGHBOUR : Method.KRIGING);
  }

  /** Whether the floor will be kriged, so that steps count. */
  static boolean kriges(Spots spots, SurfaceWish wish) {
    return method(spots, wish) == Method.KRIGING && spots.count() <= MOST_KRIGED;
  }
}
