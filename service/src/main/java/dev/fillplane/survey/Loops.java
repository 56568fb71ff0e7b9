package dev.fillplane.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.TreeMap;
import org.apache.commons.math3.special.Erf;

/**
 * All loops that the readings outside the spanning tree close, the worst first, held against their
 * limits.
 *
 * <p>Where two setups share thousands of points there are thousands of loops over the same setups,
 * and the largest of them is over 5 mm sqrt(setups) by chance. So one of n such loops is held
 * against the limit or what the largest reaches by chance, whichever is more: as many deviations of
 * the loop as are exceeded with a chance of 0.27 % / (n + 1)2 (3.6 for two loops, 6.2 for 5,000;
 * Bonferroni's bound over the pairs of n + 1 shared points, of which the tree takes an extreme
 * one). A loop alone, and a limit that the caller told, stand as they are. What two setups differ
 * by on average is held by {@link Ties}, whose limit grows narrower with the points.
 */
final class Loops {

  /** Most loops that are kept. */
  static final int KEPT = 50;

  /** Chance to be over three deviations of a normal error. */
  private static final double CHANCE = 0.0027;

  /** Errors this close count as equal; the one met first comes first. */
  private static final double EQUAL = 1e-9;

  private static final Comparator<List<Integer>> BY_SETUPS =
      (one, other) -> {
        for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
          int by = Integer.compare(one.get(i), other.get(i));
          if (by != 0) {
            return by;
          }
        }
        return Integer.compare(one.size(), other.size());
      };

  /** A loop and the how-manieth it was met as. */
  private record Met(ClosedLoop loop, int order) {

    /** How bad it is, in steps of what counts as equal. */
    double size() {
      return Math.rint(Math.abs(loop.error()) / EQUAL);
    }
  }

  private static final Comparator<Met> MILDEST_FIRST =
      Comparator.comparingDouble(Met::size)
          .thenComparing(Comparator.comparingInt(Met::order).reversed());

  /** All loops over the same setups. */
  private static final class Group {
    private int count;
    private double worst;
  }

  private final Network network;
  private final LoopLimits limits;
  private final PriorityQueue<Met> kept = new PriorityQueue<>(MILDEST_FIRST);
  private final Map<List<Integer>, Group> groups = new TreeMap<>(BY_SETUPS);

  Loops(Network network, SpanningTree tree, LoopLimits limits) {
    this.network = network;
    this.limits = limits;
    int met = 0;
    for (int point : network.ties()) {
      for (int i = network.from(point); i < network.to(point); i++) {
        if (!tree.runsAlong(point, i)) {
          add(new Met(ClosedLoop.by(point, i, network, tree), met++));
        }
      }
    }
  }

  private void add(Met met) {
    kept.add(met);
    if (kept.size() > KEPT) {
      kept.remove();
    }
    double error = met.loop().error();
    Group group = groups.computeIfAbsent(met.loop().setups(), setups -> new Group());
    group.count++;
    group.worst = Math.abs(error) > Math.abs(group.worst) ? error : group.worst;
  }

  /** At most {@link #KEPT}, the worst first. */
  List<Loop> worst(String[] names) {
    List<Met> all = new ArrayList<>(kept);
    all.sort(MILDEST_FIRST.reversed());
    return all.stream().map(met -> loop(met.loop().setups(), met.loop().error(), names)).toList();
  }

  private Loop loop(List<Integer> setups, double error, String[] names) {
    return new Loop(
        setups.stream().map(setup -> names[setup]).toList(), error, limits.of(setups.size()));
  }

  /** The worst of those that are over their limit and over what chance explains. */
  Optional<Loop> overLimit(String[] names) {
    Optional<Loop> over = Optional.empty();
    for (Map.Entry<List<Integer>, Group> entry : groups.entrySet()) {
      double error = entry.getValue().worst;
      if (Math.abs(error) > allowed(entry.getKey(), entry.getValue().count)
          && Math.abs(error) > over.map(loop -> Math.abs(loop.value())).orElse(0.0)) {
        over = Optional.of(loop(entry.getKey(), error, names));
      }
    }
    return over;
  }

  private double allowed(List<Integer> setups, int count) {
    double limit = limits.of(setups.size());
    return count == 1 || limits.toldByCaller() ? limit : Math.max(limit, byChance(setups, count));
  }

  /** What the largest of {@code count} loops over the same setups reaches by chance. */
  private double byChance(List<Integer> setups, int count) {
    double variance = setups.stream().mapToDouble(setup -> 2 / network.weight(setup)).sum();
    return Math.sqrt(2 * variance) * Erf.erfcInv(CHANCE / Math.pow(count + 1.0, 2));
  }
}
