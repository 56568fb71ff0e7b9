package dev.fillplane.target;

import static dev.fillplane.surface.TestFloors.room;
import static dev.fillplane.surface.TestFloors.sample;

import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.Prisms;
import dev.fillplane.surface.Spots;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;

/** One invented room whose floor may be ground, for tests. */
record GroundFloor(HighPoints highs, double minimumDepth, double grindDepth, Rates rates) {

  static final double STEEPEST = 0.002;

  static GroundFloor of(DoubleBinaryOperator floor, double cell, double... ring) {
    Spots none = new Spots(new double[0], new double[0], new double[0], new double[0]);
    HighPoints highs = HighPoints.of(sample(floor, cell, room("r", ring)), none, List.of());
    return new GroundFloor(highs, 0.003, 0.02, Rates.usual());
  }

  GroundFloor at(double fill, double grind) {
    return new GroundFloor(highs, minimumDepth, grindDepth, new Rates(fill, grind));
  }

  GroundFloor deepest(double depth) {
    return new GroundFloor(highs, minimumDepth, depth, rates);
  }

  Limits limits(double steepest, Band... bands) {
    return new Limits(highs, minimumDepth, grindDepth, List.of(bands), steepest, steepest == 0);
  }

  Plane plane(Band... bands) {
    return PlaneSearch.find(limits(STEEPEST, bands), rates).orElseThrow();
  }

  Plane level(Band... bands) {
    return Plane.level(LevelSearch.find(limits(0, bands), rates));
  }

  FloorSample floor() {
    return highs.floor();
  }

  private Prisms under(Plane plane) {
    double elevation = plane.elevation() - minimumDepth;
    return floor().under(elevation, plane.slopeX(), plane.slopeY(), 0);
  }

  /** What a plane costs beside the minimum depth, by the sums of prisms. */
  double price(Plane plane) {
    Prisms prisms = under(plane);
    return rates.fill() * prisms.fillVolume() + rates.grind() * prisms.cutVolume();
  }

  /** The whole price. */
  double wholePrice(Plane plane) {
    return price(plane) + rates.fill() * minimumDepth * floor().area();
  }

  double groundVolume(Plane plane) {
    return under(plane).cutVolume();
  }

  double groundArea(Plane plane) {
    return under(plane).cutArea();
  }

  /** The deepest that the floor is ground under a plane. */
  double deepestCut(Plane plane) {
    int i = highs.highestOver(plane);
    return highs.elevation(i) + minimumDepth - plane.at(highs.x(i), highs.y(i));
  }

  double centroidElevation(Plane plane) {
    return plane.at(highs.centroid().x(), highs.centroid().y());
  }

  /** A floor of small humps, different each time. */
  static DoubleBinaryOperator humps(Random random) {
    double[] p = random.doubles(8).toArray();
    return (x, y) ->
        0.004 * p[0] * Math.sin(2 * p[1] * x + p[2])
            + 0.004 * p[3] * Math.cos(2 * p[4] * y + p[5])
            + 0.003 * (p[6] - 0.5) * x
            + 0.003 * (p[7] - 0.5) * y;
  }
}
