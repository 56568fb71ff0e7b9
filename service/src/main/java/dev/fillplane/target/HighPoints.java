package dev.fillplane.target;

import dev.fillplane.room.Position;
import dev.fillplane.surface.FloorPoints;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.Spots;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What a target has to cover: all points of the sampled floor that can be its highest over any
 * plane, and the readings that lie in a room, which may stand above the floor between them.
 */
public final class HighPoints {

  private final FloorSample floor;
  private final List<Integer> rooms;
  private final Position centroid;
  private final Spots readings;
  private final List<String> readingNames;
  private final double[] x;
  private final double[] y;
  private final double[] elevation;
  private final String[] names;
  private final PointBlocks blocks;

  private HighPoints(
      FloorSample floor, List<Integer> rooms, Spots readings, List<String> readingNames) {
    this.floor = floor;
    this.rooms = rooms;
    centroid = floor.centroid(rooms);
    this.readings = readings;
    this.readingNames = readingNames;
    FloorPoints points = floor.points(rooms);
    int[] inside = inside();
    x = new double[inside.length + points.count()];
    y = new double[x.length];
    elevation = new double[x.length];
    names = new String[inside.length];
    for (int i = 0; i < inside.length; i++) {
      x[i] = readings.x()[inside[i]];
      y[i] = readings.y()[inside[i]];
      elevation[i] = readings.elevation()[inside[i]];
      names[i] = readingNames.get(inside[i]);
    }
    System.arraycopy(points.x(), 0, x, inside.length, points.count());
    System.arraycopy(points.y(), 0, y, inside.length, points.count());
    System.arraycopy(points.elevation(), 0, elevation, inside.length, points.count());
    blocks = new PointBlocks(x, y, elevation);
  }

  /**
   * Readings first, then the floor.
   *
   * @param names one for each reading
   */
  public static HighPoints of(FloorSample floor, Spots readings, List<String> names) {
    List<Integer> all = IntStream.range(0, floor.rooms().size()).boxed().toList();
    return new HighPoints(floor, all, readings, names);
  }

  /** Those of some rooms only. */
  HighPoints in(List<Integer> some) {
    return some.equals(rooms) ? this : new HighPoints(floor, some, readings, readingNames);
  }

  private int[] inside() {
    boolean all = rooms.size() == floor.rooms().size();
    int[] inside = new int[readings.count()];
    int n = 0;
    for (int i = 0; i < readings.count(); i++) {
      double atX = readings.x()[i];
      double atY = readings.y()[i];
      boolean in =
          all
              ? floor.covers(atX, atY)
              : rooms.stream().anyMatch(room -> floor.covers(room, atX, atY));
      if (in) {
        inside[n++] = i;
      }
    }
    return Arrays.copyOf(inside, n);
  }

  /** The rooms that they are of. */
  List<Integer> rooms() {
    return rooms;
  }

  /** Centroid of the rooms. */
  Position centroid() {
    return centroid;
  }

  FloorSample floor() {
    return floor;
  }

  int count() {
    return x.length;
  }

  double x(int i) {
    return x[i];
  }

  double y(int i) {
    return y[i];
  }

  double elevation(int i) {
    return elevation[i];
  }

  /** The name of the reading, if it is one. */
  Optional<String> name(int i) {
    return i < names.length ? Optional.of(names[i]) : Optional.empty();
  }

  /** Which is the highest above a plane; the first of several. */
  int highestOver(Plane plane) {
    double likely = highest(blocks.likeliest(plane), plane);
    int highest = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int block = 0; block < blocks.count(); block++) {
      if (blocks.bound(block, plane) < likely) {
        continue;
      }
      for (int i = blocks.first(block); i < blocks.end(block); i++) {
        double height = over(plane, i);
        if (height > most) {
          most = height;
          highest = i;
        }
      }
    }
    return highest;
  }

  private double highest(int block, Plane plane) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = blocks.first(block); i < blocks.end(block); i++) {
      most = Math.max(most, over(plane, i));
    }
    return most;
  }

  private double over(Plane plane, int i) {
    return elevation[i] - plane.at(x[i], y[i]);
  }

  /** The points that stand over a plane by some height or more, in order; and some lower ones. */
  IntStream near(Plane plane, double height) {
    return IntStream.range(0, blocks.count())
        .filter(block -> blocks.bound(block, plane) >= height)
        .flatMap(block -> IntStream.range(blocks.first(block), blocks.end(block)));
  }
}
