package dev.fillplane.flatness;

import dev.fillplane.finding.Stopped;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.locationtech.jts.geom.Polygon;

/**
 * The largest gap under a straightedge that rests on two high points of the floor.
 *
 * <p>The gap is the largest vertical distance from the floor up to the edge, between the two
 * contacts; ends that hang over do not count and the edge is not set level (the rule of DIN 18202
 * and of pavement specifications). As algorithm: the upper hull of the profile in a window as long
 * as the edge, the window sliding by one sample, the largest gap of all hull edges. Only hollows
 * count, never crests: this is not the mid-ordinate of a chord.
 *
 * <p>Valid for slopes of a floor (vertical and square to the edge are taken as the same). Exact for
 * the samples; between them a gap may be larger by what the floor bends within 0.1 m.
 *
 * @see FlatnessCheck for what the gap means for a covering
 */
public final class Straightedge {

  /** Directions that a floor is tried in, over half a turn. */
  static final int DIRECTIONS = 16;

  /** Distance of samples along the edge, about, and of lines. */
  static final double STEP = 0.1;

  /** Where less than this, and less than the edge, fits between walls no edge is laid. */
  static final double SHORTEST = 0.5;

  /** The shortest edge: three samples and a little more than two steps between them. */
  public static final double LEAST_EDGE = 0.3;

  private static final double WHOLE = 1e-9;

  private Straightedge() {}

  /**
   * The largest gap of a floor. The edge is laid in 16 directions from the longest wall of each
   * room, on lines 0.1 m apart, in steps of about 0.1 m (a whole number to the edge); never across
   * walls or holes. Where less than its length fits between them, an edge as long as what fits is
   * laid, down to 0.5 m or to the whole of a shorter edge. Turning the whole plan leaves the gap
   * alone within 1e-6 m, if the elevation turns with it and no two walls at odd angles are equally
   * long.
   *
   * @param rooms valid polygons, m
   * @param elevation of the floor at x, y in any of the rooms, m; finite there
   * @param length of the edge, at least 0.3 m
   * @return empty where no hollow is found: the floor is plane or crowned, or no edge fits
   */
  public static Optional<Gap> largestGap(
      List<Polygon> rooms, DoubleBinaryOperator elevation, double length) {
    return walk(rooms, elevation, new GapLimit(length, Double.POSITIVE_INFINITY, 1), 0).largest();
  }

  /**
   * Lays the edge of {@code limit} everywhere on a floor, as above, and counts its places by the
   * gap under it.
   *
   * @param margin within which a gap is known, m; not negative
   */
  public static EdgeWalk walk(
      List<Polygon> rooms, DoubleBinaryOperator elevation, GapLimit limit, double margin) {
    double length = limit.straightedge();
    if (!(length >= LEAST_EDGE && Double.isFinite(length))) {
      throw new IllegalArgumentException("straightedge of " + length + " m");
    }
    GapSearch search = new GapSearch(elevation, limit, margin);
    for (Polygon room : rooms) {
      for (int direction = 0; direction < DIRECTIONS; direction++) {
        Stopped.ifInterrupted();
        search.walk(room, Frame.of(room, Math.PI * direction / DIRECTIONS));
      }
    }
    return search.result();
  }

  /**
   * The largest gap along one line of evenly spaced heights; on a line shorter than the edge, under
   * an edge as long as the line.
   *
   * @param heights along the line, m, larger is higher; finite
   * @param spacing between them, m; positive
   * @param length of the edge, m; the whole spacings in it are used
   * @return the first of the largest gaps
   */
  public static ProfileGap gap(double[] heights, double spacing, double length) {
    if (!(spacing > 0 && length > 0)) {
      throw new IllegalArgumentException("spacing " + spacing + ", length " + length);
    }
    int steps = (int) Math.min(Math.floor(length / spacing + WHOLE), heights.length - 1.0);
    HullGap window = new HullGap(Math.max(steps + 1, 1));
    ProfileGap largest = new ProfileGap(0, 0, 0, 0);
    for (int first = 0; first + steps < heights.length && steps > 1; first++) {
      if (window.measure(heights, first, first + steps) > largest.gap()) {
        largest = window.result();
      }
    }
    return largest;
  }
}
