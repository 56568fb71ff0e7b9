package dev.fillplane.depth;

import dev.fillplane.surface.FloorResiduals;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.Prisms;
import dev.fillplane.target.Plane;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * Target minus floor over the rooms: exact for the piecewise-linear floor, clipped to the outlines
 * and to zero depth, so that fill and floor above the target never cancel. Immutable and safe to
 * share.
 *
 * @see FloorSample
 */
public final class DepthField implements Depths {

  private final FloorSample floor;
  private final Plane target;
  private final List<Prisms> byRoom;
  private final Prisms all;
  private final Extremes extremes;

  private DepthField(FloorSample floor, Plane target) {
    this.floor = floor;
    this.target = target;
    List<Prisms> sums = new ArrayList<>();
    Prisms total = Prisms.NONE;
    for (int room = 0; room < floor.rooms().size(); room++) {
      Prisms prisms = floor.under(target.elevation(), target.slopeX(), target.slopeY(), room);
      sums.add(prisms);
      total = total.plus(prisms);
    }
    byRoom = List.copyOf(sums);
    all = total;
    extremes = Extremes.of(floor, target);
  }

  /** The depths of a target over a floor. */
  public static DepthField of(FloorSample floor, Plane target) {
    return new DepthField(floor, target);
  }

  @Override
  public double at(double x, double y) {
    return target.at(x, y) - floor.elevation(x, y);
  }

  /**
   * {@inheritDoc}
   *
   * <p>The parts of a partition add up to the whole to 1e-9 of it.
   *
   * @param part a valid polygon; what sticks out of the rooms does not count
   */
  @Override
  public Fill within(Polygon part) {
    return fill(floor.under(target.elevation(), target.slopeX(), target.slopeY(), part));
  }

  /** {@inheritDoc} Exact for the piecewise-linear floor; a depth of 0 gives the whole pour. */
  @Override
  public Fill deeperThan(double depth) {
    double lower = target.elevation() - depth;
    Prisms total = Prisms.NONE;
    for (int room = 0; room < floor.rooms().size(); room++) {
      total = total.plus(floor.under(lower, target.slopeX(), target.slopeY(), room));
    }
    return fill(total);
  }

  /** What is poured in each room, in the order of the rooms. */
  public List<Fill> rooms() {
    return byRoom.stream().map(DepthField::fill).toList();
  }

  /** Rounding may leave a shade less than nothing. */
  private static Fill fill(Prisms prisms) {
    return new Fill(Math.max(0, prisms.fillArea()), Math.max(0, prisms.fillVolume()));
  }

  /** Area of the rooms. */
  public double area() {
    return all.area();
  }

  /** Area that is below the target. */
  public double pouredArea() {
    return fill(all).area();
  }

  /** Volume above the floor and below the target. */
  public double volume() {
    return fill(all).volume();
  }

  /** Mean depth of the poured area; 0 where nothing is poured. */
  public double mean() {
    return fill(all).meanDepth();
  }

  /** Largest depth; negative where all of the floor stands above the target. */
  public double maximum() {
    return extremes.deepest().depth();
  }

  /** Smallest depth; negative where part of the floor stands above the target. */
  public double minimum() {
    return extremes.minimum();
  }

  /** Volume of the floor above the target. */
  public double grindVolume() {
    return Math.max(0, all.cutVolume());
  }

  /** Area on which the floor stands above the target. */
  public double grindArea() {
    return Math.max(0, all.cutArea());
  }

  /** Where the pour is deepest; of several places the first from the south-west. */
  public Deepest deepest() {
    return extremes.deepest();
  }

  /** Where the floor is highest; of several places the first from the south-west. */
  public Highest highest() {
    return extremes.highest();
  }

  /** Depths at the centres of the cells, 0 where the floor stands above the target. */
  public Grid grid() {
    double[] depths = new double[floor.columns() * floor.rows()];
    for (int row = 0; row < floor.rows(); row++) {
      for (int column = 0; column < floor.columns(); column++) {
        depths[row * floor.columns() + column] = gridDepth(floor.centre(column, row));
      }
    }
    return new Grid(
        floor.originX(), floor.originY(), floor.cell(), floor.columns(), floor.rows(), depths);
  }

  private double gridDepth(int node) {
    return floor.inRoom(node) ? Math.max(0, nodeDepth(node)) : Grid.OUTSIDE;
  }

  private double nodeDepth(int node) {
    return target.at(floor.nodeX(node), floor.nodeY(node)) - floor.nodeElevation(node);
  }

  /**
   * Lines of equal depth of the piecewise-linear floor, inside the rooms; a level without any line
   * is left out.
   *
   * @see ContourLevels
   */
  public List<Contour> contours(double[] levels) {
    List<Contour> contours = new ArrayList<>();
    for (double level : levels) {
      Contour contour = ContourTracer.trace(floor, this::nodeDepth, level);
      if (!contour.lines().isEmpty()) {
        contours.add(contour);
      }
    }
    return contours;
  }

  /** What is poured over each of many equally likely floors; the target stays. */
  public VolumeDraws volumes(FloorResiduals residuals) {
    return new DrawIntegrator(floor, target, residuals).draws(byRoom);
  }
}
