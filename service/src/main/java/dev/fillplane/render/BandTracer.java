package dev.fillplane.render;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * Rings round all that is at least so deep, by marching squares between the centres of the cells
 * (linear along their edges; at a saddle the mean of the four decides). The deep side is on the
 * left on plan, so rings and holes fill rightly by either rule.
 */
final class BandTracer {

  private static final int BOTTOM = 0;
  private static final int RIGHT = 1;
  private static final int TOP = 2;
  private static final int LEFT = 3;

  /** By which of the corners SW, SE, NE, NW (1, 2, 4, 8) are deep: edges from and to. */
  private static final int[][] STEPS = {
    {},
    {BOTTOM, LEFT},
    {RIGHT, BOTTOM},
    {RIGHT, LEFT},
    {TOP, RIGHT},
    {BOTTOM, LEFT, TOP, RIGHT},
    {TOP, BOTTOM},
    {TOP, LEFT},
    {LEFT, TOP},
    {BOTTOM, TOP},
    {RIGHT, BOTTOM, LEFT, TOP},
    {RIGHT, TOP},
    {LEFT, RIGHT},
    {BOTTOM, RIGHT},
    {LEFT, BOTTOM},
    {}
  };

  /** The two saddles where the middle is deep. */
  private static final int[] DEEP_SADDLE_5 = {BOTTOM, RIGHT, TOP, LEFT};

  private static final int[] DEEP_SADDLE_10 = {LEFT, BOTTOM, RIGHT, TOP};

  private final PaddedGrid grid;
  private final View view;
  private final double depth;
  private final int[] next;

  private BandTracer(PaddedGrid grid, View view, double depth) {
    this.grid = grid;
    this.view = view;
    this.depth = depth;
    next = new int[2 * grid.columns() * grid.rows()];
    Arrays.fill(next, -1);
  }

  /** Closed rings in px. */
  static List<Coordinate[]> trace(PaddedGrid grid, View view, double depth) {
    BandTracer tracer = new BandTracer(grid, view, depth);
    tracer.step();
    return tracer.rings();
  }

  private void step() {
    for (int row = 0; row < grid.rows() - 1; row++) {
      for (int column = 0; column < grid.columns() - 1; column++) {
        int[] steps = steps(column, row);
        for (int i = 0; i < steps.length; i += 2) {
          next[edge(column, row, steps[i])] = edge(column, row, steps[i + 1]);
        }
      }
    }
  }

  private int[] steps(int column, int row) {
    double sw = grid.depth(column, row);
    double se = grid.depth(column + 1, row);
    double ne = grid.depth(column + 1, row + 1);
    double nw = grid.depth(column, row + 1);
    int deep = bit(sw, 1) | bit(se, 2) | bit(ne, 4) | bit(nw, 8);
    boolean middle = sw + se + ne + nw >= 4 * depth;
    if (middle && deep == 5) {
      return DEEP_SADDLE_5;
    }
    return middle && deep == 10 ? DEEP_SADDLE_10 : STEPS[deep];
  }

  private int bit(double corner, int bit) {
    return corner >= depth ? bit : 0;
  }

  /** Edges are numbered by their south-west end: even ones run east, odd ones north. */
  private int edge(int column, int row, int side) {
    int east = 2 * (row * grid.columns() + column);
    return switch (side) {
      case BOTTOM -> east;
      case LEFT -> east + 1;
      case TOP -> east + 2 * grid.columns();
      default -> east + 3;
    };
  }

  private List<Coordinate[]> rings() {
    List<Coordinate[]> rings = new ArrayList<>();
    for (int start = 0; start < next.length; start++) {
      List<Coordinate> ring = new ArrayList<>();
      for (int edge = start; next[edge] >= 0; ) {
        ring.add(crossing(edge));
        int to = next[edge];
        next[edge] = -1;
        edge = to;
      }
      if (ring.size() > 2) {
        ring.add(ring.get(0).copy());
        rings.add(ring.toArray(Coordinate[]::new));
      }
    }
    return rings;
  }

  private Coordinate crossing(int edge) {
    int node = edge / 2;
    int column = node % grid.columns();
    int row = node / grid.columns();
    boolean north = edge % 2 == 1;
    double from = grid.depth(column, row);
    double to = north ? grid.depth(column, row + 1) : grid.depth(column + 1, row);
    double share = (depth - from) / (to - from);
    // One end may lie where there is no depth.
    double at = Double.isFinite(from) && Double.isFinite(to) ? share : 0.5;
    return view.at(grid.x(column + (north ? 0 : at)), grid.y(row + (north ? at : 0)));
  }
}
