package dev.fillplane.surface;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/**
 * Equal rectangular cells over rooms, of which only those count that reach into a room. They are
 * numbered row by row from the south-west.
 */
final class RoomLattice {

  /** Part of a cell that a room has to reach into. */
  private static final double TOUCH = 1e-6;

  /** No cell is narrower, in metres: also for a room without area. */
  private static final double LEAST_PITCH = 1e-3;

  /** A lattice of up to so many cells for each that counts has a list of all. */
  private static final double SHORT = 4;

  private final double originX;
  private final double originY;
  private final double width;
  private final double height;
  private final long columns;
  private final long rows;
  private final long[] kept;
  private final int[] number;

  private RoomLattice(List<Polygon> rooms, double pitch) {
    Envelope all = new Envelope();
    rooms.forEach(room -> all.expandToInclude(room.getEnvelopeInternal()));
    originX = all.getMinX();
    originY = all.getMinY();
    columns = (long) Math.max(1, Math.ceil(all.getWidth() / pitch));
    rows = (long) Math.max(1, Math.ceil(all.getHeight() / pitch));
    width = all.getWidth() > 0 ? all.getWidth() / columns : pitch;
    height = all.getHeight() > 0 ? all.getHeight() / rows : pitch;
    TreeSet<Long> touched = new TreeSet<>();
    rooms.forEach(room -> addCells(room, touched));
    if (touched.isEmpty()) {
      touched.add(0L);
    }
    kept = touched.stream().mapToLong(Long::longValue).toArray();
    number = isSparse() ? new int[0] : numbers();
  }

  /**
   * Cells no wider than {@code pitch}, but for as much more as brings them to {@code most} or
   * fewer. Many rooms far from each other may keep one cell each and so exceed {@code most}.
   */
  static RoomLattice over(List<Polygon> rooms, double pitch, int most) {
    double area = 0;
    double longest = 0;
    for (Polygon room : rooms) {
      area += room.getArea();
      longest = Math.max(longest, room.getEnvelopeInternal().getWidth());
      longest = Math.max(longest, room.getEnvelopeInternal().getHeight());
    }
    double wide =
        Math.max(Math.max(LEAST_PITCH, pitch), Math.max(Math.sqrt(area / most), longest / most));
    RoomLattice lattice = new RoomLattice(rooms, wide);
    while (lattice.count() > Math.max(most, rooms.size())) {
      wide *= Math.max(1.05, Math.sqrt((double) lattice.count() / most));
      lattice = new RoomLattice(rooms, wide);
    }
    return lattice;
  }

  /** Whether so few cells of the box count that a list of all would be a waste. */
  boolean isSparse() {
    return columns * (double) rows > SHORT * kept.length;
  }

  /** For each cell of the box its number, -1 where it does not count. */
  private int[] numbers() {
    int[] numbers = new int[(int) (columns * rows)];
    Arrays.fill(numbers, -1);
    for (int i = 0; i < kept.length; i++) {
      numbers[(int) kept[i]] = i;
    }
    return numbers;
  }

  private void addCells(Polygon room, Set<Long> touched) {
    PreparedGeometry prepared = PreparedGeometryFactory.prepare(room);
    GeometryFactory factory = room.getFactory();
    Envelope bounds = room.getEnvelopeInternal();
    long lastRow = row(bounds.getMaxY());
    long lastColumn = column(bounds.getMaxX());
    for (long row = row(bounds.getMinY()); row <= lastRow; row++) {
      for (long column = column(bounds.getMinX()); column <= lastColumn; column++) {
        Envelope cell =
            new Envelope(
                originX + (column + TOUCH) * width,
                originX + (column + 1 - TOUCH) * width,
                originY + (row + TOUCH) * height,
                originY + (row + 1 - TOUCH) * height);
        if (prepared.intersects(factory.toGeometry(cell))) {
          touched.add(row * columns + column);
        }
      }
    }
  }

  /** How many cells there are. */
  int count() {
    return kept.length;
  }

  /** The cell at a position; the nearest by its centre where none is. */
  int cellAt(double x, double y) {
    long at = row(y) * columns + column(x);
    int cell = number.length > 0 ? number[(int) at] : Arrays.binarySearch(kept, at);
    return cell >= 0 ? cell : nearest(x, y);
  }

  private int nearest(double x, double y) {
    int best = 0;
    for (int cell = 1; cell < kept.length; cell++) {
      if (distance(cell, x, y) < distance(best, x, y)) {
        best = cell;
      }
    }
    return best;
  }

  private double distance(int cell, double x, double y) {
    return Math.hypot(centreX(cell) - x, centreY(cell) - y);
  }

  /** Where the middles of all cells are. */
  double[] x() {
    return IntStream.range(0, count()).mapToDouble(this::centreX).toArray();
  }

  /** Where the middles of all cells are. */
  double[] y() {
    return IntStream.range(0, count()).mapToDouble(this::centreY).toArray();
  }

  /** Where the middle of a cell is. */
  double centreX(int cell) {
    return originX + (columnOf(cell) + 0.5) * width;
  }

  /** Where the middle of a cell is. */
  double centreY(int cell) {
    return originY + (rowOf(cell) + 0.5) * height;
  }

  long columnOf(int cell) {
    return kept[cell] % columns;
  }

  long rowOf(int cell) {
    return kept[cell] / columns;
  }

  long columns() {
    return columns;
  }

  long rows() {
    return rows;
  }

  /** From one column to the next. */
  double width() {
    return width;
  }

  /** From one row to the next. */
  double height() {
    return height;
  }

  private long column(double x) {
    return Math.max(0, Math.min(columns - 1, (long) Math.floor((x - originX) / width)));
  }

  private long row(double y) {
    return Math.max(0, Math.min(rows - 1, (long) Math.floor((y - originY) / height)));
  }
}
