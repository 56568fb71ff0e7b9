package dev.fillplane.surface;

import java.util.ArrayList;
import java.util.List;

/**
 * Puts a list into rounds by a coin for each element: about half of it comes in the last round, a
 * quarter in the round before, and so on; each round keeps the order of the list. Triangulated so
 * (Amenta, Choi and Rote, Incremental constructions con BRIO, 2003), places on lines and arcs take
 * no more than places spread over the floor, where curve order alone has every new place redo the
 * triangles of all before it.
 */
final class InRounds {

  /** Lists shorter than this are one round. */
  private static final int SHORT = 1_000;

  private InRounds() {}

  static <T> List<T> of(List<T> list) {
    int rounds = 1;
    while (list.size() >> rounds >= SHORT) {
      rounds++;
    }
    List<T> ordered = new ArrayList<>(list.size());
    for (int round = 0; round < rounds; round++) {
      for (int i = 0; i < list.size(); i++) {
        if (round == round(i, rounds)) {
          ordered.add(list.get(i));
        }
      }
    }
    return ordered;
  }

  /** Half of all numbers are of the last round, a quarter of the one before it, and so on. */
  private static int round(int number, int rounds) {
    return Math.max(0, rounds - 1 - Long.numberOfTrailingZeros(mixed(number)));
  }

  /** Bits by chance; the last step of SplitMix64 (Steele, Lea and Flood, 2014). */
  private static long mixed(int number) {
    long z = (number + 1) * 0x9E3779B97F4A7C15L;
    z = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
    z = (z ^ z >>> 27) * 0x94D049BB133111EBL;
    return z ^ z >>> 31;
  }
}
