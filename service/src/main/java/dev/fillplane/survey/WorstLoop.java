package dev.fillplane.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The loop with the largest closing error among those that one reading outside the spanning tree
 * closes. Benchmarks are joined by the ground, so two of them make a loop as well. Every other loop
 * of the network is a sum of these.
 *
 * @param error what is left over when the loop is walked with its earlier setups first; positive
 *     where it comes back too high; which way round is arbitrary for one or two setups
 * @param setups how many setups it goes through
 */
record WorstLoop(double error, int setups) {

  /** Errors this close count as equal; the first one met is taken. */
  private static final double EQUAL = 1e-9;

  /** The worst loop, where there is any. */
  static Optional<WorstLoop> find(Network network, SpanningTree tree) {
    int worstPoint = -1;
    int worstSetup = -1;
    double worst = 0;
    for (int point : network.ties()) {
      for (int i = network.from(point); i < network.to(point); i++) {
        if (tree.runsAlong(point, i)) {
          continue;
        }
        int setup = network.setup(i);
        double error = tree.plane(setup) - network.reading(i) - tree.elevation(point);
        if (worstPoint < 0 || Math.abs(error) > Math.abs(worst) + EQUAL) {
          worstPoint = point;
          worstSetup = setup;
          worst = error;
        }
      }
    }
    return worstPoint < 0
        ? Optional.empty()
        : Optional.of(closedBy(worstSetup, worstPoint, worst, tree));
  }

  private static WorstLoop closedBy(int setup, int point, double error, SpanningTree tree) {
    List<Integer> toSetup = branch(setup, tree);
    List<Integer> toPoint = branch(node(point), tree);
    int around = 0;
    while (!toSetup.isEmpty() && !toPoint.isEmpty() && last(toSetup).equals(last(toPoint))) {
      around = isSetup(last(toSetup)) ? 1 : 0;
      toSetup.remove(toSetup.size() - 1);
      toPoint.remove(toPoint.size() - 1);
    }
    around += (int) (setups(toSetup).count() + setups(toPoint).count());
    boolean setupFirst =
        setups(toSetup).min().orElse(Integer.MAX_VALUE)
            <= setups(toPoint).min().orElse(Integer.MAX_VALUE);
    return new WorstLoop(setupFirst ? error : -error, around);
  }

  /** Setups are nodes by their number, points by negative numbers. */
  private static int node(int point) {
    return -1 - point;
  }

  private static boolean isSetup(int node) {
    return node >= 0;
  }

  private static IntStream setups(List<Integer> branch) {
    return branch.stream().mapToInt(Integer::intValue).filter(WorstLoop::isSetup);
  }

  private static Integer last(List<Integer> branch) {
    return branch.get(branch.size() - 1);
  }

  /** From {@code node} back to where the tree starts. */
  private static List<Integer> branch(int node, SpanningTree tree) {
    List<Integer> passed = new ArrayList<>();
    int at = node;
    while (true) {
      passed.add(at);
      int before = isSetup(at) ? tree.pointBefore(at) : tree.setupBefore(-1 - at);
      if (before == SpanningTree.NONE) {
        return passed;
      }
      at = isSetup(at) ? node(before) : before;
    }
  }
}
