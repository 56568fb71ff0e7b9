package dev.fillplane.flatness;

import dev.fillplane.finding.Stopped;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.locationtech.jts.geom.Polygon;

/**
 * An estimate of what makes a floor flat without a pour: grind what stands more than half the limit
 * above the plane of least squares of its room, fill what lies more than half the limit below it.
 *
 * <p>What is left fits between two planes one limit apart, so no straightedge shows more. That is
 * more than flatness asks (a long wave may stay), so the estimate is on the high side; where the
 * floor already passes nothing of it is needed. Patches are counted up to the lower plane, without
 * waste. Sampled every 0.1 m.
 *
 * @param grindArea floor to grind
 * @param patchVolume patching compound to fill
 * @param humps the parts to grind, the highest first
 * @param hollows the parts to fill, the deepest first
 */
public record GrindAndPatch(
    @Measured(Dimension.AREA) double grindArea,
    @Measured(Dimension.FILL) double patchVolume,
    List<Hump> humps,
    List<Hollow> hollows) {

  private static final double SPACING = 0.1;

  /** Copies the lists. */
  public GrindAndPatch {
    humps = List.copyOf(humps);
    hollows = List.copyOf(hollows);
  }

  /** Estimates the work for the main figure of a covering. */
  public static GrindAndPatch of(
      List<Polygon> rooms, DoubleBinaryOperator elevation, FlatnessLimit limit) {
    return of(rooms, elevation, limit.gap());
  }

  /**
   * Estimates the work, each room about its own plane.
   *
   * @param rooms valid polygons, m
   * @param elevation of the floor at x, y in any of the rooms, m
   * @param gap that is allowed, m
   */
  public static GrindAndPatch of(List<Polygon> rooms, DoubleBinaryOperator elevation, double gap) {
    double half = gap / 2;
    List<Hump> humps = new ArrayList<>();
    List<Hollow> hollows = new ArrayList<>();
    double patch = 0;
    for (Polygon room : rooms) {
      Stopped.ifInterrupted();
      Lattice above = Lattice.of(room, elevation, SPACING).aboveTrend();
      humps.addAll(Humps.of(above, room, half));
      Humps.of(above.upsideDown(), room, half).stream().map(Hollow::of).forEach(hollows::add);
      patch += GrindSums.of(above, half).patchVolume();
    }
    humps.sort(Comparator.comparingDouble(Hump::height).reversed());
    hollows.sort(Comparator.comparingDouble(Hollow::depth).reversed());
    double grind = humps.stream().mapToDouble(Hump::area).sum();
    return new GrindAndPatch(grind, patch, humps, hollows);
  }

  /**
   * The same work in sum, without its parts.
   *
   * @param rooms valid polygons, m
   * @param elevation of the floor at x, y in any of the rooms, m
   */
  public static GrindSums sums(
      List<Polygon> rooms, DoubleBinaryOperator elevation, FlatnessLimit limit) {
    double half = limit.gap() / 2;
    GrindSums all = new GrindSums(0, 0, 0);
    for (Polygon room : rooms) {
      Stopped.ifInterrupted();
      all = all.and(GrindSums.of(Lattice.of(room, elevation, SPACING).aboveTrend(), half));
    }
    return all;
  }

  /**
   * Estimates the work for several figures: for the gap of the first of them or, if what is left
   * then breaks another one, for the smallest gap of all.
   *
   * @param figures at least one, the main one first
   */
  public static GrindAndPatch of(
      List<Polygon> rooms, DoubleBinaryOperator elevation, List<GapLimit> figures) {
    double main = figures.get(0).gap();
    boolean enough =
        rooms.stream().allMatch(room -> keeps(room, after(room, elevation, main), figures));
    double least = figures.stream().mapToDouble(GapLimit::gap).min().orElse(main);
    return of(rooms, elevation, enough ? main : least);
  }

  /** The height of a room once the parts are ground and patched, m. */
  static DoubleBinaryOperator after(Polygon room, DoubleBinaryOperator elevation, double gap) {
    DoubleBinaryOperator plane = Lattice.of(room, elevation, SPACING).plane();
    return (x, y) -> {
      double middle = plane.applyAsDouble(x, y);
      double height = elevation.applyAsDouble(x, y);
      return Math.max(middle - gap / 2, Math.min(middle + gap / 2, height));
    };
  }

  private static boolean keeps(
      Polygon room, DoubleBinaryOperator elevation, List<GapLimit> figures) {
    return figures.stream()
        .allMatch(
            figure ->
                Straightedge.walk(List.of(room), elevation, figure, 0)
                        .places()
                        .verdict(figure.share())
                    == Passes.WITHIN);
  }
}
