package dev.fillplane.web;

import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Bounds the bytes of all bodies that are held at once. Counted as they arrive, so that nobody
 * keeps room by only announcing a large body. Safe to share.
 */
final class HeldBytes {

  private final long most;
  private final AtomicLong held = new AtomicLong();

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
      if (held.addAndGet(bytes) > most) {
        held.addAndGet(-bytes);
        throw full();
      }
      own.addAndGet(bytes);
    }

    /** Gives all of it back. */
    void free() {
      held.addAndGet(-own.getAndSet(0));
    }
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
