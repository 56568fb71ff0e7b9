package dev.fillplane.depth;

/**
 * The cells of a room sorted by the coarse cell that they lie in, which keeps the order of the
 * cells in each.
 */
final class CoarseCells {

  private final int[] start;
  private final int[] cells;

  /**
   * Is shown one coarse cell: its cells are those from one place in the order to before another.
   */
  interface Visitor {
    void coarse(int coarse, int from, int to);
  }

  private CoarseCells(int[] start, int[] cells) {
    this.start = start;
    this.cells = cells;
  }

  /** With the coarse cell of each cell. */
  static CoarseCells of(int[] coarse) {
    int most = 0;
    for (int of : coarse) {
      most = Math.max(most, of);
    }
    int[] start = new int[most + 2];
    for (int of : coarse) {
      start[of + 1]++;
    }
    for (int i = 1; i < start.length; i++) {
      start[i] += start[i - 1];
    }
    int[] next = start.clone();
    int[] cells = new int[coarse.length];
    for (int cell = 0; cell < coarse.length; cell++) {
      cells[next[coarse[cell]]++] = cell;
    }
    return new CoarseCells(start, cells);
  }

  /** Shows the coarse cells that hold any. */
  void each(Visitor visitor) {
    for (int coarse = 0; coarse + 1 < start.length; coarse++) {
      if (start[coarse] < start[coarse + 1]) {
        visitor.coarse(coarse, start[coarse], start[coarse + 1]);
      }
    }
  }

  /** The cell at a place in the order. */
  int cell(int place) {
    return cells[place];
  }
}
