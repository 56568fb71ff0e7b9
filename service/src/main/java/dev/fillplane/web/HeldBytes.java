package dev.fillplane.web;

import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Bounds the bytes of large bodies that are held at once. Counted as they arrive, so that nobody
 * keeps room by only announcing a large body. The first bytes of each are free: what is small is
 * never refused because others send much. Safe to share.
 */
final class HeldBytes {

  /** What of each body does not count. */
  static final int FREE_BYTES = 16_384;

  private final long most;
  private final AtomicLong held = new AtomicLong();
  private final AtomicLong counted = new AtomicLong();

  HeldBytes(long most) {
    this.most = most;
  }

  /** The part of one body. One thread at a time may add to it; any may free it, more than once. */
  final class Share {

    private final AtomicLong own = new AtomicLong();

    /**
     * Takes room for more bytes.
     *
     * @throws Refusal if there is none
     */
    void add(int bytes) {
      long before = own.getAndAdd(bytes);
      long more = beyond(before + bytes) - beyond(before);
      held.addAndGet(bytes);
      if (counted.addAndGet(more) > most && more > 0) {
        free();
        throw full();
      }
    }

    /** Gives all of it back. */
    void free() {
      long bytes = own.getAndSet(0);
      held.addAndGet(-bytes);
      counted.addAndGet(-beyond(bytes));
    }
  }

  private static long beyond(long bytes) {
    return Math.max(0, bytes - FREE_BYTES);
  }

  Share share() {
    return new Share();
  }

  /** Bytes held at the moment. */
  long held() {
    return held.get();
  }

  private static Refusal full() {
    Problem problem =
        Problem.of(
            Problem.Kind.BUSY,
            "The bodies of other requests fill the memory set aside; try again in a moment.");
    return new Refusal(problem, Map.of("Retry-After", "5"));
  }
}
