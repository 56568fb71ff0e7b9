package dev.fillplane.pour;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.Optional;

/**
 * One of the crew.
 *
 * @param number from 1
 * @param roles what they do, the longest first; empty for those who stand by
 * @param busy time at work, washing up included
 * @param waiting time with nothing to do before the last batch is placed
 * @param waitsFor what they wait for longest, if they work and wait
 * @param tasks what they do when, in order
 */
public record Worker(
    int number,
    List<Role> roles,
    @Measured(Dimension.TIME) double busy,
    @Measured(Dimension.TIME) double waiting,
    Optional<Stage> waitsFor,
    List<Task> tasks) {

  /** Copies the lists. */
  public Worker {
    tasks = List.copyOf(tasks);
    roles = List.copyOf(roles);
  }
}
