package dev.fillplane.surface;

import dev.fillplane.finding.Stopped;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/**
 * Where more readings would narrow the volume most: of the nodes in the rooms, away from walls and
 * readings, the one that takes most from the variance of the volume; then the next, with the first
 * one read. Greedy: the best single place, but not always the best set.
 *
 * @see VolumeSpread
 */
public final class NextReadings {

  /** How far from every reading a place lies at least. */
  public static final double FROM_READINGS = 0.2;

  /** How far from every wall and island: a rod needs room to stand. */
  public static final double FROM_WALLS = 0.1;

  /** A gain below this part of the variance is none. */
  private static final double LEAST_GAIN = 1e-6;

  /** Gains that differ by less than this part are equal; the first from the south-west counts. */
  private static final double EQUAL = 1e-9;

  private final FloorNodes nodes;
  private final VolumeSpread spread;
  private final boolean[] open;

  /**
   * A place for one more reading.
   *
   * @param before variance of the volume without it, m6
   * @param after variance of the volume with it
   */
  public record Choice(double x, double y, double before, double after) {}

  private NextReadings(FloorNodes nodes, VolumeSpread spread, Spots spots, List<Polygon> rooms) {
    this.nodes = nodes;
    this.spread = spread;
    open = new boolean[nodes.count()];
    RoomLocator locator = new RoomLocator(rooms);
    for (int i = 0; i < open.length; i++) {
      Coordinate at = new Coordinate(nodes.x()[i], nodes.y()[i]);
      int room = nodes.room()[i];
      open[i] =
          locator.location(room, at) == Location.INTERIOR
              && fromWalls(rooms.get(room), at) > FROM_WALLS;
    }
    for (int s = 0; s < spots.count(); s++) {
      close(spots.x()[s], spots.y()[s]);
    }
  }

  private static double fromWalls(Polygon room, Coordinate at) {
    double least = fromRing(room.getExteriorRing(), at);
    for (int i = 0; i < room.getNumInteriorRing(); i++) {
      least = Math.min(least, fromRing(room.getInteriorRingN(i), at));
    }
    return least;
  }

  private static double fromRing(LinearRing ring, Coordinate at) {
    return Distance.pointToSegmentString(at, ring.getCoordinates());
  }

  /**
   * Chooses places, the best first; each counts on those before it being read.
   *
   * @param spread after the readings so far; is changed
   * @param spots the readings so far
   * @param rooms in the order of the nodes' rooms, valid
   * @param error variance of a reading
   * @param most places, at least 0
   * @return fewer where no place is left or none would help
   */
  public static List<Choice> choose(
      FloorNodes nodes,
      VolumeSpread spread,
      Spots spots,
      List<Polygon> rooms,
      double error,
      int most) {
    NextReadings search = new NextReadings(nodes, spread, spots, rooms);
    List<Choice> choices = new ArrayList<>();
    while (choices.size() < most) {
      Stopped.ifInterrupted();
      int best = search.best(error);
      if (best < 0) {
        break;
      }
      choices.add(search.read(best, error));
    }
    return choices;
  }

  private int best(double error) {
    int best = -1;
    double most = LEAST_GAIN * spread.variance();
    for (int i = 0; i < open.length; i++) {
      double gain = open[i] ? spread.gain(i, error) : 0;
      if (gain > most * (1 + EQUAL)) {
        most = gain;
        best = i;
      }
    }
    return best;
  }

  private Choice read(int node, double error) {
    double before = spread.variance();
    spread.read(node, error);
    close(nodes.x()[node], nodes.y()[node]);
    return new Choice(nodes.x()[node], nodes.y()[node], before, spread.variance());
  }

  private void close(double x, double y) {
    for (int i = 0; i < open.length; i++) {
      double east = nodes.x()[i] - x;
      double north = nodes.y()[i] - y;
      open[i] &= Math.sqrt(east * east + north * north) >= FROM_READINGS;
    }
  }
}
