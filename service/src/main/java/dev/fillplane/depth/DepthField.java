package dev.fillplane.depth;

import dev.fillplane.finding.Stopped;
import dev.fillplane.room.Room;
import dev.fillplane.surface.FloorPoints;
import dev.fillplane.surface.FloorResiduals;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.Prisms;
import dev.fillplane.target.Plane;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Polygon;

/**
 * Target minus floor over the rooms: exact for the piecewise-linear floor, clipped to the outlines
 * and to zero depth, so that fill and floor above the target never cancel. Where the floor is
 * ground, the least depth lies over all that stood higher. Immutable and safe to share.
 *
 * @see FloorSample
 */
public final class DepthField implements Depths {

  private final FloorSample floor;
  private final Levels levels;
  private final DepthRule rule;
  private final List<Prisms> byRoom;
  private final Prisms all;
  private Extremes extremes;

  private DepthField(FloorSample floor, Levels levels) {
    this.floor = floor;
    this.levels = levels;
    rule = new DepthRule(floor, levels);
    List<Prisms> sums = new ArrayList<>();
    Prisms total = Prisms.NONE;
    for (int room = 0; room < floor.rooms().size(); room++) {
      Prisms prisms = deeperThan(0, room);
      sums.add(prisms);
      total = total.plus(prisms);
    }
    byRoom = List.copyOf(sums);
    all = total;
  }

  /** The depths of one target over a floor of which nothing is ground. */
  public static DepthField of(FloorSample floor, Plane target) {
    return of(floor, Levels.of(target, floor.rooms().size()));
  }

  /**
   * The depths of targets over a floor.
   *
   * @param levels with a plane for each room
   */
  public static DepthField of(FloorSample floor, Levels levels) {
    if (levels.planes().size() != floor.rooms().size()) {
      throw new IllegalArgumentException(
          levels.planes().size() + " planes for " + floor.rooms().size() + " rooms");
    }
    return new DepthField(floor, levels);
  }

  /** Where the floor is ground, the pour stays as deep as it is ground for. */
  private Prisms deeperThan(double depth, int room) {
    Plane plane = levels.planes().get(room);
    double kept = Math.max(0, levels.groundTo().orElse(0) - depth);
    double elevation = plane.elevation() - depth - kept;
    return raised(floor.under(elevation, plane.slopeX(), plane.slopeY(), room), kept);
  }

  /** The plane that the floor of a room is ground to, or else its target. */
  private Plane lowered(int room) {
    Plane plane = levels.planes().get(room);
    return new Plane(
        plane.elevation() - levels.groundTo().orElse(0), plane.slopeX(), plane.slopeY());
  }

  /** Sums under a lowered plane, with {@code more} of depth over all of it. */
  private static Prisms raised(Prisms under, double more) {
    return more > 0
        ? new Prisms(
            under.area(),
            under.area(),
            Math.max(0, under.fillVolume()) + more * under.area(),
            under.cutArea(),
            under.cutVolume())
        : under;
  }

  @Override
  public double at(double x, double y) {
    return rule.at(x, y, floor.elevation(x, y));
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
    Prisms sum = Prisms.NONE;
    for (int room = 0; room < byRoom.size(); room++) {
      Plane plane = lowered(room);
      Prisms under = floor.under(plane.elevation(), plane.slopeX(), plane.slopeY(), room, part);
      sum = sum.plus(raised(under, levels.groundTo().orElse(0)));
    }
    return fill(sum);
  }

  @Override
  public Fill within(Room room, Polygon part) {
    int number = number(room);
    boolean whole = part.equalsExact(room.outline().polygon());
    return fill(
        whole ? byRoom.get(number) : raised(under(number, part), levels.groundTo().orElse(0)));
  }

  private Prisms under(int room, Polygon part) {
    Plane plane = lowered(room);
    return floor.under(plane.elevation(), plane.slopeX(), plane.slopeY(), part);
  }

  private int number(Room room) {
    for (int i = 0; i < floor.rooms().size(); i++) {
      if (floor.rooms().get(i).id().equals(room.id())) {
        return i;
      }
    }
    throw new IllegalArgumentException("no room of this floor: " + room.id());
  }

  /** What the floor is levelled to. */
  public Levels levels() {
    return levels;
  }

  /** Depth at a position if the floor has some elevation there. */
  public double over(double x, double y, double elevation) {
    return rule.at(x, y, elevation);
  }

  /** Whether what stands too high is ground. */
  public boolean grinds() {
    return levels.groundTo().isPresent();
  }

  /** By how much the floor stands above what it is ground to; negative below. */
  double above(double x, double y, double elevation) {
    return rule.above(x, y, elevation);
  }

  /** What is ground off in a part that was cut from a room. */
  Fill ground(int room, Polygon part) {
    Prisms under = under(room, part);
    return new Fill(Math.max(0, under.cutArea()), Math.max(0, under.cutVolume()));
  }

  FloorSample floor() {
    return floor;
  }

  /** {@inheritDoc} Exact for the piecewise-linear floor; a depth of 0 gives the whole pour. */
  @Override
  public Fill deeperThan(double depth) {
    Prisms total = Prisms.NONE;
    for (int room = 0; room < byRoom.size(); room++) {
      total = total.plus(deeperThan(depth, room));
    }
    return fill(total);
  }

  /** The same floor, ground where it is, under a target that lies {@code depth} lower. */
  public DepthField lowered(double depth) {
    List<Plane> planes =
        levels.planes().stream()
            .map(p -> new Plane(p.elevation() - depth, p.slopeX(), p.slopeY()))
            .toList();
    double kept = levels.groundTo().orElse(0) - depth;
    OptionalDouble groundTo = kept > 0 ? OptionalDouble.of(kept) : OptionalDouble.empty();
    return new DepthField(floor, new Levels(planes, groundTo));
  }

  /** What is poured in each room, in the order of the rooms. */
  public List<Fill> rooms() {
    return byRoom.stream().map(DepthField::fill).toList();
  }

  /** Least and largest depth in each room, in the order of the rooms. */
  public List<DepthRange> ranges() {
    return IntStream.range(0, floor.rooms().size()).mapToObj(this::range).toList();
  }

  private DepthRange range(int room) {
    FloorPoints points = floor.points(List.of(room));
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < points.count(); i++) {
      double depth = rule.at(room, points.x()[i], points.y()[i], points.elevation()[i]);
      least = Math.min(least, depth);
      most = Math.max(most, depth);
    }
    return new DepthRange(least, most);
  }

  /** Rounding may leave a shade less than nothing. */
  private static Fill fill(Prisms prisms) {
    return new Fill(Math.max(0, prisms.fillArea()), Math.max(0, prisms.fillVolume()));
  }

  /** Area of the rooms. */
  public double area() {
    return all.area();
  }

  /** Area that is poured. */
  public double pouredArea() {
    return fill(all).area();
  }

  /** Volume above the floor, ground where it is, and below the target. */
  public double volume() {
    return fill(all).volume();
  }

  /** Mean depth of the poured area; 0 where nothing is poured. */
  public double mean() {
    return fill(all).meanDepth();
  }

  /** Largest depth; negative where all of the floor stands above the target. */
  public double maximum() {
    return extremes().deepest().depth();
  }

  /** Smallest depth; negative where part of the floor stands above the target. */
  public double minimum() {
    return extremes().minimum();
  }

  /** Volume of the floor that is ground off; where nothing is ground, that above the target. */
  public double grindVolume() {
    return Math.max(0, all.cutVolume());
  }

  /** Area on which it is. */
  public double grindArea() {
    return Math.max(0, all.cutArea());
  }

  /** Where the pour is deepest; of several places the first from the south-west. */
  public Deepest deepest() {
    return extremes().deepest();
  }

  /** Where the floor is highest; of several places the first from the south-west. */
  public Highest highest() {
    return extremes().highest();
  }

  /** Depths at the centres of the cells, 0 where the floor stands above the target. */
  public Grid grid() {
    double[] depths = new double[floor.columns() * floor.rows()];
    for (int row = 0; row < floor.rows(); row++) {
      Stopped.ifInterrupted();
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

  double nodeDepth(int node) {
    return rule.at(floor.nodeX(node), floor.nodeY(node), floor.nodeElevation(node));
  }

  /**
   * Lines of equal depth of the piecewise-linear floor, inside the rooms; a level without any line
   * is left out.
   *
   * @param levels rising
   * @see ContourLevels
   */
  public List<Contour> contours(double[] levels) {
    double[] depths = IntStream.range(0, floor.nodes()).mapToDouble(this::nodeDepth).toArray();
    return ContourTracer.trace(floor, depths, levels).stream()
        .filter(contour -> !contour.lines().isEmpty())
        .toList();
  }

  /** What is poured over each of many equally likely floors; the target stays. */
  public VolumeDraws volumes(FloorResiduals residuals) {
    return volumes(DrawnFloor.of(floor, residuals));
  }

  /** The same over this floor as it was sorted before, which saves that for the next target. */
  public VolumeDraws volumes(DrawnFloor drawn) {
    if (drawn.floor() != floor) {
      throw new IllegalArgumentException("drawn about another floor");
    }
    return new DrawIntegrator(drawn, rule).draws(byRoom);
  }

  /** Found when it is first asked for; being a record, a race only finds it twice. */
  private Extremes extremes() {
    Extremes found = extremes;
    if (found == null) {
      found = Extremes.of(floor, rule);
      extremes = found;
    }
    return found;
  }
}
