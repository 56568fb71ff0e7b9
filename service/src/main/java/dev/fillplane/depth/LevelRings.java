package dev.fillplane.depth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * Rings round all that is at least so high, by marching squares between the nodes of a lattice
 * (linear along its edges; at a saddle the mean of the four decides). Values are carried on a few
 * nodes beyond where they are known, so that the rings reach the walls before they are cut there.
 *
 * <p>Rings are closed, never cross, and count positions in columns and rows of the lattice: node
 * (column, row) is at x = column, y = row. The high side is on the left, so that rings and holes
 * fill rightly by either rule.
 *
 * @see HighParts
 */
public final class LevelRings {

  private static final int BOTTOM = 0;
  private static final int RIGHT = 1;
  private static final int TOP = 2;
  private static final int LEFT = 3;

  /** By which of the corners SW, SE, NE, NW (1, 2, 4, 8) are high: edges from and to. */
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

  /** The two saddles where the middle is high. */
  private static final int[] HIGH_SADDLE_5 = {BOTTOM, RIGHT, TOP, LEFT};

  private static final int[] HIGH_SADDLE_10 = {LEFT, BOTTOM, RIGHT, TOP};

  private final CarriedNodes nodes;
  private final double level;
  private final int[] next;

  private LevelRings(CarriedNodes nodes, double level) {
    this.nodes = nodes;
    this.level = level;
    next = new int[2 * nodes.columns() * nodes.rows()];
    Arrays.fill(next, -1);
  }

  /** Closed rings round all that is at least at a level. */
  public static List<Coordinate[]> above(CarriedNodes nodes, double level) {
    LevelRings tracer = new LevelRings(nodes, level);
    tracer.step();
    return tracer.rings();
  }

  private void step() {
    boolean below = nodes.reaches(0, level);
    for (int row = 0; row < nodes.rows() - 1; row++) {
      boolean above = nodes.reaches(row + 1, level);
      if (below || above) {
        step(row);
      }
      below = above;
    }
  }

  private void step(int row) {
    for (int column = 0; column < nodes.columns() - 1; column++) {
      int[] steps = steps(column, row);
      for (int i = 0; i < steps.length; i += 2) {
        next[edge(column, row, steps[i])] = edge(column, row, steps[i + 1]);
      }
    }
  }

  private int[] steps(int column, int row) {
    double sw = nodes.at(column, row);
    double se = nodes.at(column + 1, row);
    double ne = nodes.at(column + 1, row + 1);
    double nw = nodes.at(column, row + 1);
    int high = bit(sw, 1) | bit(se, 2) | bit(ne, 4) | bit(nw, 8);
    boolean middle = sw + se + ne + nw >= 4 * level;
    if (middle && high == 5) {
      return HIGH_SADDLE_5;
    }
    return middle && high == 10 ? HIGH_SADDLE_10 : STEPS[high];
  }

  private int bit(double corner, int bit) {
    return corner >= level ? bit : 0;
  }

  /** Edges are numbered by their south-west end: even ones run east, odd ones north. */
  private int edge(int column, int row, int side) {
    int east = 2 * (row * nodes.columns() + column);
    return switch (side) {
      case BOTTOM -> east;
      case LEFT -> east + 1;
      case TOP -> east + 2 * nodes.columns();
      default -> east + 3;
    };
  }

  private List<Coordinate[]> rings() {
    List<Coordinate[]> rings = new ArrayList<>();
    for (int start = 0; start < next.length; start++) {
      if (next[start] >= 0) {
        List<Coordinate> ring = ring(start);
        if (ring.size() > 2) {
          ring.add(ring.get(0).copy());
          rings.add(ring.toArray(Coordinate[]::new));
        }
      }
    }
    return rings;
  }

  /** Goes round once, and takes its edges out. */
  private List<Coordinate> ring(int start) {
    List<Coordinate> ring = new ArrayList<>();
    for (int edge = start; next[edge] >= 0; ) {
      ring.add(crossing(edge));
      int to = next[edge];
      next[edge] = -1;
      edge = to;
    }
    return ring;
  }

  private Coordinate crossing(int edge) {
    int node = edge / 2;
    int column = node % nodes.columns();
    int row = node / nodes.columns();
    boolean north = edge % 2 == 1;
    double from = nodes.at(column, row);
    double to = north ? nodes.at(column, row + 1) : nodes.at(column + 1, row);
    double share = (level - from) / (to - from);
    // One end may lie where nothing is known.
    double at = Double.isFinite(share) ? share : 0.5;
    return new Coordinate(
        nodes.column(column) + (north ? 0 : at), nodes.row(row) + (north ? at : 0));
  }
}
