package dev.fillplane.web;

import java.time.Duration;

/**
 * How much heavy work is taken at once, and how long it may take.
 *
 * @param places heavy calculations that run at once
 * @param waiting requests that may wait for a place; who comes when all wait is refused at once
 * @param patience how long a request waits for its place
 * @param deadline how long a calculation may run; a large body gives a second more per megabyte
 * @param heldBytes bytes of large bodies held at once, of all requests that arrive, wait or run;
 *     what is worked out of a body takes many times its bytes
 */
public record Capacity(
    int places, int waiting, Duration patience, Duration deadline, long heldBytes) {

  private static final int WAITING = 64;
  private static final int BYTES_PER_SECOND = 1_000_000;

  /** Measured: a survey of a million readings, 20 MB of JSON, needs some 400 MB of heap. */
  private static final int HEAP_PER_BYTE = 24;

  /** What the processors and the memory of this machine can bear. */
  public static Capacity usual() {
    int places = Math.max(2, Runtime.getRuntime().availableProcessors());
    return new Capacity(
        places,
        WAITING,
        Duration.ofSeconds(10),
        Duration.ofSeconds(30),
        Runtime.getRuntime().maxMemory() / HEAP_PER_BYTE);
  }

  /** The same with other places and other room to wait for them. */
  public Capacity withPlaces(int count, int others) {
    return new Capacity(count, others, patience, deadline, heldBytes);
  }

  /** The same with another patience. */
  public Capacity withPatience(Duration time) {
    return new Capacity(places, waiting, time, deadline, heldBytes);
  }

  /** The same with another deadline. */
  public Capacity withDeadline(Duration time) {
    return new Capacity(places, waiting, patience, time, heldBytes);
  }

  /** The same with another bound on the bodies held. */
  public Capacity withHeldBytes(long bytes) {
    return new Capacity(places, waiting, patience, deadline, bytes);
  }

  /** How long the calculation of a body of this size may run. */
  Duration deadline(long bytes) {
    return deadline.plusSeconds(bytes / BYTES_PER_SECOND);
  }
}
