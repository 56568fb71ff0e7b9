package dev.fillplane.survey;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/**
 * Carries heights through the network, breadth first from the benchmarks (which stand on common
 * ground) or, without any, from the plane of the first setup at 0. Setups are met in the order of
 * the request, points in their canonical order.
 */
final class SpanningTree {

  /** Where a branch ends: at the ground of the benchmarks, or nowhere. */
  static final int NONE = -1;

  private final Network network;
  private final Deque<Integer> open = new ArrayDeque<>();
  private final boolean[] setupReached;
  private final boolean[] pointReached;
  private final double[] planes;
  private final double[] elevations;
  private final int[] readingToSetup;
  private final int[] readingToPoint;
  private final int[] pointBelowSetup;
  private final int[] setupDepth;
  private final int[] pointDepth;
  private int root = NONE;

  SpanningTree(Network network) {
    this.network = network;
    setupReached = new boolean[network.setups()];
    pointReached = new boolean[network.points()];
    planes = new double[network.setups()];
    elevations = new double[network.points()];
    readingToSetup = none(network.setups());
    readingToPoint = none(network.points());
    pointBelowSetup = none(network.setups());
    setupDepth = new int[network.setups()];
    pointDepth = new int[network.points()];
    plant();
    while (!open.isEmpty()) {
      int setup = open.remove();
      for (int point : network.tiesOf(setup)) {
        reachPoint(setup, point);
      }
    }
  }

  private static int[] none(int length) {
    int[] all = new int[length];
    Arrays.fill(all, NONE);
    return all;
  }

  private void plant() {
    boolean grounded = false;
    for (int point : network.ties()) {
      if (network.isHeld(point)) {
        grounded = true;
        pointReached[point] = true;
        pointDepth[point] = 1;
        elevations[point] = network.heldElevation(point);
      }
    }
    if (grounded) {
      for (int point : network.ties()) {
        if (network.isHeld(point)) {
          reachSetups(point);
        }
      }
      return;
    }
    root = 0;
    while (!network.used(root)) {
      root++;
    }
    setupReached[root] = true;
    open.add(root);
  }

  private void reachPoint(int setup, int point) {
    if (pointReached[point]) {
      return;
    }
    pointReached[point] = true;
    int index = network.from(point);
    while (network.setup(index) != setup) {
      index++;
    }
    readingToPoint[point] = index;
    pointDepth[point] = setupDepth[setup] + 1;
    elevations[point] = planes[setup] - network.reading(index);
    reachSetups(point);
  }

  private void reachSetups(int point) {
    int from = network.from(point);
    for (; from < network.to(point); from = network.endOfGroup(point, from)) {
      int setup = network.setup(from);
      if (!setupReached[setup]) {
        setupReached[setup] = true;
        setupDepth[setup] = pointDepth[point] + 1;
        pointBelowSetup[setup] = point;
        readingToSetup[setup] = from;
        planes[setup] = elevations[point] + network.reading(from);
        open.add(setup);
      }
    }
  }

  /** Whether height is carried to {@code setup}. */
  boolean reaches(int setup) {
    return setupReached[setup];
  }

  /** The setup whose plane is 0, or {@link #NONE} where benchmarks are held. */
  int root() {
    return root;
  }

  /** The elevation of the plane of {@code setup} along the tree. */
  double plane(int setup) {
    return planes[setup];
  }

  /** The elevation of a tie along the tree. */
  double elevation(int point) {
    return elevations[point];
  }

  /** Whether the tree runs along a reading; every other one closes a loop. */
  boolean runsAlong(int point, int index) {
    return readingToPoint[point] == index || readingToSetup[network.setup(index)] == index;
  }

  /** The node of a point; setups are nodes by their number. */
  static int node(int point) {
    return -2 - point;
  }

  /** How many nodes lie between {@code node} and where its branch starts. */
  int depth(int node) {
    if (node == NONE) {
      return 0;
    }
    return node >= 0 ? setupDepth[node] : pointDepth[node(node)];
  }

  /** The node from which height came to {@code node}; {@link #NONE} for the common ground. */
  int before(int node) {
    if (node >= 0) {
      return node(pointBelowSetup[node]);
    }
    int reading = readingToPoint[node(node)];
    return reading == NONE ? NONE : network.setup(reading);
  }
}
