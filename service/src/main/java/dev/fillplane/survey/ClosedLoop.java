package dev.fillplane.survey;

import java.util.List;
import java.util.TreeSet;

/**
 * The loop that one reading outside the spanning tree closes. Benchmarks are joined by the ground,
 * so two of them make a loop as well. Every other loop of the network is a sum of these.
 *
 * @param error what is left over when the loop is walked with its earlier setups first; positive
 *     where it comes back too high
 * @param setups the setups it goes through, ascending
 */
record ClosedLoop(double error, List<Integer> setups) {

  /** The loop of the reading {@code index} of {@code point}. */
  static ClosedLoop by(int point, int index, Network network, SpanningTree tree) {
    int setup = network.setup(index);
    double error = tree.plane(setup) - network.reading(index) - tree.elevation(point);
    TreeSet<Integer> fromSetup = new TreeSet<>();
    TreeSet<Integer> fromPoint = new TreeSet<>();
    int one = setup;
    int other = SpanningTree.node(point);
    while (one != other) {
      if (tree.depth(one) >= tree.depth(other)) {
        note(one, fromSetup);
        one = tree.before(one);
      } else {
        note(other, fromPoint);
        other = tree.before(other);
      }
    }
    int first = fromSetup.isEmpty() ? Integer.MAX_VALUE : fromSetup.first();
    int second = fromPoint.isEmpty() ? Integer.MAX_VALUE : fromPoint.first();
    fromSetup.addAll(fromPoint);
    note(one, fromSetup);
    return new ClosedLoop(first <= second ? error : -error, List.copyOf(fromSetup));
  }

  private static void note(int node, TreeSet<Integer> setups) {
    if (node >= 0) {
      setups.add(node);
    }
  }
}
