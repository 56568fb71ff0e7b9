package dev.fillplane.surface;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Where to read a floor of which nothing is known but its rooms and how it usually varies. First
 * the openings, then the corners, then the long walls, then places inside; among equals always the
 * one that narrows the volume most, all of the rooms being poured. Places closer than {@link
 * #APART} to one that is chosen are left out. Deterministic; for one thread.
 *
 * @see VolumeSpread
 */
public final class SurveyDesign {

  /** The covariance of a floor of which nothing is known, but for the error of a reading. */
  public static final Variogram USUAL =
      new Variogram(
          VariogramShape.MATERN_3_2, 0, CovarianceFit.USUAL_SILL, CovarianceFit.USUAL_RANGE);

  /** Least distance of two places. */
  public static final double APART = 0.5;

  /** Places at openings, corners and walls that are looked at; many more are thinned. */
  static final int MOST_EDGES = 500;

  /** Places inside that are looked at. */
  static final int MOST_NODES = 650;

  private static final double EQUAL = 1e-9;
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private final List<PlannedSpot> places = new ArrayList<>();
  private final boolean[] open;
  private final VolumeSpread spread;
  private final double error;
  private final List<PlannedSpot> chosen = new ArrayList<>();

  private SurveyDesign(List<Room> rooms, Variogram variogram, Drift drift, double error) {
    this.error = Math.max(KrigedSurface.LEAST_VARIANCE, error);
    FloorNodes nodes = nodes(rooms);
    for (int i = 0; i < nodes.count(); i++) {
      places.add(new PlannedSpot(nodes.x()[i], nodes.y()[i], nodes.room()[i], SpotReason.INSIDE));
    }
    places.addAll(edges(rooms));
    open = new boolean[places.size()];
    Arrays.fill(open, true);
    List<Polygon> polygons = rooms.stream().map(room -> room.outline().polygon()).toList();
    List<Geometry> walls = polygons.stream().map(Polygon::getBoundary).toList();
    for (int i = 0; i < nodes.count(); i++) {
      open[i] = isClear(places.get(i), polygons, walls);
    }
    spread =
        VolumeSpread.before(
            variogram,
            drift,
            places.stream().mapToDouble(PlannedSpot::x).toArray(),
            places.stream().mapToDouble(PlannedSpot::y).toArray(),
            Arrays.copyOf(nodes.area(), places.size()));
  }

  /**
   * Starts without a place.
   *
   * @param rooms at least one, valid
   * @param variogram of the floor; its nugget is not looked at
   * @param error variance of a reading
   */
  public static SurveyDesign over(
      List<Room> rooms, Variogram variogram, Drift drift, double error) {
    return new SurveyDesign(rooms, variogram, drift, error);
  }

  private static FloorNodes nodes(List<Room> rooms) {
    double cell = CellSize.choose(rooms, OptionalDouble.empty(), Place.root(), new Findings());
    return FloorNodes.of(FloorSample.of(rooms, new Flat(), cell), 1, 0, 0, MOST_NODES);
  }

  private static List<PlannedSpot> edges(List<Room> rooms) {
    List<PlannedSpot> edges = new ArrayList<>();
    for (int i = 0; i < rooms.size(); i++) {
      edges.addAll(EdgeSpots.of(i, rooms.get(i)));
    }
    int step = (edges.size() + MOST_EDGES - 1) / MOST_EDGES;
    return IntStream.range(0, edges.size())
        .filter(i -> i % Math.max(1, step) == 0)
        .mapToObj(edges::get)
        .toList();
  }

  private static boolean isClear(PlannedSpot place, List<Polygon> rooms, List<Geometry> walls) {
    var at = GEOMETRY.createPoint(new Coordinate(place.x(), place.y()));
    return rooms.get(place.room()).contains(at)
        && !walls.get(place.room()).isWithinDistance(at, NextReadings.FROM_WALLS);
  }

  /**
   * Chooses one more place.
   *
   * @return false if none is left
   */
  public boolean next() {
    for (SpotReason why : SpotReason.values()) {
      int best = best(why);
      if (best >= 0) {
        take(best);
        return true;
      }
    }
    return false;
  }

  /** Whether openings, corners and walls are all chosen, so that the next place is inside. */
  public boolean edgesChosen() {
    return IntStream.range(0, open.length)
        .noneMatch(i -> open[i] && places.get(i).why() != SpotReason.INSIDE);
  }

  /** The places so far, in the order of choice. */
  public List<PlannedSpot> chosen() {
    return List.copyOf(chosen);
  }

  /** Standard deviation of the volume once the places so far are read, m3. */
  public double deviation() {
    return Math.sqrt(spread.variance());
  }

  private int best(SpotReason why) {
    int best = -1;
    double most = -1;
    for (int i = 0; i < open.length; i++) {
      if (open[i] && places.get(i).why() == why) {
        double gain = spread.gain(i, error);
        if (best < 0 || gain > most * (1 + EQUAL)) {
          most = gain;
          best = i;
        }
      }
    }
    return best;
  }

  private void take(int best) {
    PlannedSpot place = places.get(best);
    chosen.add(place);
    spread.read(best, error);
    open[best] = false;
    for (int i = 0; i < open.length; i++) {
      open[i] &= places.get(i).room() != place.room() || places.get(i).distance(place) >= APART;
    }
  }

  /** Stands for the floor until it is known: only its cells are wanted. */
  private static final class Flat implements Surface {
    @Override
    public double elevation(double x, double y) {
      return 0;
    }

    @Override
    public double deviation(double x, double y) {
      return 0;
    }
  }
}
