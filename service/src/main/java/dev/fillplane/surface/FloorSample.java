package dev.fillplane.surface;

import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The floor sampled on square cells that are clipped to the rooms. Each cell is four triangles from
 * its centre; on them the floor is linear, and what is summed here over that piecewise-linear floor
 * is exact, also along crooked outlines and islands. It differs from the surface itself only by
 * what the surface bends within a cell. Immutable and safe to share.
 *
 * <p>Positions are plan coordinates; inside they are counted from the south-west corner of the
 * rooms' box, so that a plan far from its origin loses nothing.
 *
 * @see CellSize
 */
public final class FloorSample {

  /** Parts of a cell by which a room's edge may miss a cell that is sampled for it all the same. */
  private static final double ROOM_MARGIN = 1e-6;

  /** The same for a part of a room; smaller, so that its cells are always sampled. */
  private static final double PART_MARGIN = 1e-9;

  private final List<Room> rooms;
  private final List<Polygon> polygons;
  private final Lattice lattice;
  private final List<Region> regions;
  private final NodeHeights heights;
  private final RoomLocator locator;
  private final FloorSums sums;
  private final List<RoomCells> cells;
  private final List<FloorCells> cellsOnPlan;
  private final boolean[] inRoom;
  private final FloorPoints points;
  private final BitSet whole = new BitSet();

  private FloorSample(List<Room> rooms, List<Polygon> polygons, Lattice lattice, Surface surface) {
    this.rooms = rooms;
    this.polygons = polygons;
    this.lattice = lattice;
    double margin = ROOM_MARGIN * lattice.cell();
    regions = polygons.stream().map(polygon -> Region.of(polygon, lattice, margin)).toList();
    regions.forEach(region -> Arrays.stream(region.whole()).forEach(whole::set));
    heights = NodeHeights.sample(lattice, regions, surface);
    locator = new RoomLocator(polygons);
    sums = new FloorSums(lattice, heights);
    cells = regions.stream().map(sums::cells).toList();
    cellsOnPlan = cells.stream().map(ofRoom -> ofRoom.onPlan(lattice)).toList();
    PointCollector collector = new PointCollector(lattice, heights, locator);
    List<Integer> all = IntStream.range(0, rooms.size()).boxed().toList();
    inRoom = collector.nodesInRooms(all, regions);
    points = collector.points(inRoom, regions);
  }

  /**
   * Samples the floor.
   *
   * @param rooms at least one, with valid outlines that do not overlap
   * @param cell side of a cell; positive
   */
  public static FloorSample of(List<Room> rooms, Surface surface, double cell) {
    List<Polygon> polygons = rooms.stream().map(room -> room.outline().polygon()).toList();
    Envelope box = new Envelope();
    polygons.forEach(polygon -> box.expandToInclude(polygon.getEnvelopeInternal()));
    return new FloorSample(List.copyOf(rooms), polygons, Lattice.over(box, cell), surface);
  }

  /** The rooms, in the order in which everything by room is given. */
  public List<Room> rooms() {
    return rooms;
  }

  /** West edge of the first column. */
  public double originX() {
    return lattice.originX();
  }

  /** South edge of the first row. */
  public double originY() {
    return lattice.originY();
  }

  /** Side of a cell. */
  public double cell() {
    return lattice.cell();
  }

  /** Cells in a row. */
  public int columns() {
    return lattice.columns();
  }

  /** Rows of cells. */
  public int rows() {
    return lattice.rows();
  }

  /** Elevation of the piecewise-linear floor; away from the rooms that of the nearest cell. */
  public double elevation(double x, double y) {
    return heights.at(x - lattice.originX(), y - lattice.originY());
  }

  /** Whether a position lies in a room or on its edge. */
  public boolean covers(double x, double y) {
    int row = lattice.row(y - lattice.originY());
    int column = lattice.column(x - lattice.originX());
    return whole.get(row * lattice.columns() + column) || locator.room(x, y) >= 0;
  }

  /** The first room in which a position lies, its edge included; -1 where there is none. */
  public int room(double x, double y) {
    return locator.room(x, y);
  }

  /** Whether a position lies in a room (by its number) or on its edge. */
  public boolean covers(int room, double x, double y) {
    return locator.location(room, new Coordinate(x, y)) != Location.EXTERIOR;
  }

  /** Area of all rooms. */
  public double area() {
    return polygons.stream().mapToDouble(Polygon::getArea).sum();
  }

  /** Centroid of all rooms by area. */
  public Position centroid() {
    return centroid(IntStream.range(0, cells.size()).boxed().toList());
  }

  /** Centroid of some rooms by area. */
  public Position centroid(List<Integer> some) {
    double area = 0;
    double x = 0;
    double y = 0;
    for (int room : some) {
      RoomCells ofRoom = cells.get(room);
      for (int i = 0; i < ofRoom.count(); i++) {
        area += ofRoom.area()[i];
        x += ofRoom.area()[i] * ofRoom.x()[i];
        y += ofRoom.area()[i] * ofRoom.y()[i];
      }
    }
    return new Position(lattice.originX() + x / area, lattice.originY() + y / area);
  }

  /** Cuts the floor of some rooms; its positions are counted from {@code about}. */
  public FloorCutter cutter(List<Integer> some, Position about) {
    return FloorCutter.of(regions(some), lattice, heights, about);
  }

  private List<Region> regions(List<Integer> some) {
    return some.stream().map(regions::get).toList();
  }

  /**
   * Corners and centres of cells that lie in a room, from the south-west, then the points where the
   * outlines cross the triangles: among them are the highest and the lowest point of the
   * piecewise-linear floor, and those furthest over or under any plane.
   */
  public FloorPoints points() {
    return points;
  }

  /** The same of some rooms only. */
  public FloorPoints points(List<Integer> some) {
    if (some.size() == rooms.size()) {
      return points;
    }
    PointCollector collector = new PointCollector(lattice, heights, locator);
    List<Region> their = regions(some);
    return collector.points(collector.nodesInRooms(some, their), their);
  }

  /** The cells of a room, clipped to it. */
  public FloorCells cells(int room) {
    return cellsOnPlan.get(room);
  }

  /**
   * What lies between a plane and the floor of a room.
   *
   * @param elevation elevation of the plane at the plan origin
   * @param slopeX its rise along x
   * @param slopeY its rise along y
   */
  public Prisms under(double elevation, double slopeX, double slopeY, int room) {
    return sums.prisms(regions.get(room), cells.get(room), elevation, slopeX, slopeY);
  }

  /** The same in the part of the room that lies in a polygon. */
  public Prisms under(double elevation, double slopeX, double slopeY, int room, Polygon part) {
    if (part.equalsExact(polygons.get(room))) {
      return under(elevation, slopeX, slopeY, room);
    }
    Polygon outline = polygons.get(room);
    Prisms all = Prisms.NONE;
    if (outline.getEnvelopeInternal().intersects(part.getEnvelopeInternal())) {
      Geometry shared = OverlayNGRobust.overlay(outline, part, OverlayNG.INTERSECTION);
      for (int i = 0; i < shared.getNumGeometries(); i++) {
        if (shared.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
          all = all.plus(under(elevation, slopeX, slopeY, polygon));
        }
      }
    }
    return all;
  }

  /** The same in a part that was cut from a room: all of it, as if the room went on under it. */
  public Prisms under(double elevation, double slopeX, double slopeY, Polygon part) {
    return sums.prisms(part, PART_MARGIN * lattice.cell(), elevation, slopeX, slopeY);
  }

  /** Shows the triangles of all cells that touch a room. */
  public void triangles(int room, TriangleVisitor visitor) {
    Region region = regions.get(room);
    show(region.whole(), false, visitor);
    show(region.cut(), true, visitor);
  }

  private void show(int[] cells, boolean cut, TriangleVisitor visitor) {
    for (int cell : cells) {
      for (int i = 0; i < 4; i++) {
        visitor.triangle(
            lattice.corner(cell, i), lattice.corner(cell, (i + 1) % 4), lattice.centre(cell), cut);
      }
    }
  }

  /** How many nodes the triangles have, with those that no room touches. */
  public int nodes() {
    return lattice.nodes();
  }

  /** Where a node of the triangles is. */
  public double nodeX(int node) {
    return lattice.originX() + lattice.nodeX(node);
  }

  /** Where a node of the triangles is. */
  public double nodeY(int node) {
    return lattice.originY() + lattice.nodeY(node);
  }

  /** Elevation at a node of the triangles. */
  public double nodeElevation(int node) {
    return heights.at(node);
  }

  /** The node at the centre of a cell. */
  public int centre(int column, int row) {
    return lattice.centre(row * lattice.columns() + column);
  }

  /** Whether a node lies in a room or on its edge. */
  public boolean inRoom(int node) {
    return inRoom[node];
  }
}
