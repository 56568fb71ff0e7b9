package dev.fillplane.client.host;

import java.util.Iterator;
import java.util.OptionalInt;

/** Where rooms and readings come from. */
@FunctionalInterface
public interface UnitSource {

  /**
   * The units of one run, each asked for when it is its turn; so they need not all be in memory.
   * One thread at a time asks, not always that of the run. What it throws ends the run once the
   * units before are done.
   */
  Iterator<Unit> units();

  /** How many units there are, where that is known; to show progress by. */
  default OptionalInt count() {
    return OptionalInt.empty();
  }
}
