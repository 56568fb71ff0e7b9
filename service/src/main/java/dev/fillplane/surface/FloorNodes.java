package dev.fillplane.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleBinaryOperator;

/**
 * A few hundred places that stand for the whole floor: square cells, in each the part of each room
 * that lies in it, told by its centroid. Sums over them are coarse, but their areas add up to those
 * of the rooms.
 *
 * <p>Arrays that nobody writes to; one entry a node, by room and then row by row from the
 * south-west.
 *
 * @param frame the cells
 * @param cell number of the cell that a node lies in
 * @param room number of its room
 * @param x centroid
 * @param y centroid
 * @param area of the part of the room
 * @param wetArea the part of it that lies below the target
 */
public record FloorNodes(
    Frame frame, int[] cell, int[] room, double[] x, double[] y, double[] area, double[] wetArea) {

  /** Nodes at most unless told, but for rooms that need one each. */
  static final int MOST = 300;

  /** Cells of the box at most, so that rooms far from each other do not make it endless. */
  static final int MOST_CELLS = 2_500;

  /** No cell is smaller: two readings side by side tell hardly more than one. */
  static final double LEAST_CELL = 0.25;

  /** Square cells over the box of the rooms, row by row from the south-west. */
  public record Frame(double originX, double originY, double cell, int columns, int rows) {

    static Frame over(FloorSample floor, double cell) {
      return new Frame(
          floor.originX(),
          floor.originY(),
          cell,
          across(floor.columns() * floor.cell(), cell),
          across(floor.rows() * floor.cell(), cell));
    }

    private static int across(double length, double cell) {
      return (int) Math.max(1, Math.ceil(length / cell - 1e-9));
    }

    double cells() {
      return (double) columns * rows;
    }

    int at(double atX, double atY) {
      int column = (int) Math.floor((atX - originX) / cell);
      int row = (int) Math.floor((atY - originY) / cell);
      return Math.max(0, Math.min(rows - 1, row)) * columns
          + Math.max(0, Math.min(columns - 1, column));
    }
  }

  /**
   * The nodes of a floor under a target.
   *
   * @param elevation elevation of the target at the plan origin
   * @param slopeX its rise along x
   * @param slopeY its rise along y
   */
  public static FloorNodes of(FloorSample floor, double elevation, double slopeX, double slopeY) {
    return of(floor, elevation, slopeX, slopeY, MOST);
  }

  /** The same with up to {@code most} nodes, but for rooms that need one each. */
  static FloorNodes of(
      FloorSample floor, double elevation, double slopeX, double slopeY, int most) {
    List<FloorCells> rooms = new ArrayList<>();
    for (int room = 0; room < floor.rooms().size(); room++) {
      rooms.add(floor.cells(room));
    }
    DoubleBinaryOperator target = (x, y) -> elevation + slopeX * x + slopeY * y;
    double side = Math.max(Math.max(LEAST_CELL, floor.cell()), Math.sqrt(floor.area() / most));
    while (true) {
      // Whole cells of the floor in each, so that rounding does not decide where one belongs.
      Frame frame = Frame.over(floor, Math.ceil(side / floor.cell() - 1e-9) * floor.cell());
      if (frame.cells() <= MOST_CELLS) {
        FloorNodes nodes = of(frame, rooms, target);
        if (nodes.count() <= Math.max(most, rooms.size())) {
          return nodes;
        }
      }
      side *= 1.1;
    }
  }

  private static FloorNodes of(Frame frame, List<FloorCells> rooms, DoubleBinaryOperator target) {
    Collected all = new Collected(rooms.stream().mapToInt(FloorCells::count).sum());
    for (int room = 0; room < rooms.size(); room++) {
      FloorCells cells = rooms.get(room);
      int[] node = new int[(int) frame.cells()];
      Arrays.fill(node, -1);
      for (int i = 0; i < cells.count(); i++) {
        int cell = frame.at(cells.x()[i], cells.y()[i]);
        node[cell] = node[cell] < 0 ? all.begin(cell, room) : node[cell];
        boolean wet = target.applyAsDouble(cells.x()[i], cells.y()[i]) > cells.elevation()[i];
        all.add(node[cell], cells.x()[i], cells.y()[i], cells.area()[i], wet);
      }
    }
    return all.nodes(frame);
  }

  /** How many there are. */
  public int count() {
    return x.length;
  }

  /** Nodes in the making; no more than the cells they are made of. */
  private static final class Collected {
    private final int[] cell;
    private final int[] room;
    private final double[] x;
    private final double[] y;
    private final double[] area;
    private final double[] wet;
    private int count;

    Collected(int most) {
      cell = new int[most];
      room = new int[most];
      x = new double[most];
      y = new double[most];
      area = new double[most];
      wet = new double[most];
    }

    int begin(int inCell, int inRoom) {
      cell[count] = inCell;
      room[count] = inRoom;
      return count++;
    }

    /** The centroid moves toward each new part, so that far-off coordinates keep their digits. */
    void add(int node, double partX, double partY, double partArea, boolean isWet) {
      area[node] += partArea;
      x[node] += area[node] == partArea ? partX : (partX - x[node]) * partArea / area[node];
      y[node] += area[node] == partArea ? partY : (partY - y[node]) * partArea / area[node];
      wet[node] += isWet ? partArea : 0;
    }

    FloorNodes nodes(Frame frame) {
      return new FloorNodes(
          frame,
          Arrays.copyOf(cell, count),
          Arrays.copyOf(room, count),
          Arrays.copyOf(x, count),
          Arrays.copyOf(y, count),
          Arrays.copyOf(area, count),
          Arrays.copyOf(wet, count));
    }
  }
}
