package dev.fillplane.web;

import io.javalin.http.Context;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.server.Request;

/**
 * Reads the bodies of requests: no larger than is taken, no more of them at once than the memory
 * bears, no slower than a bad line of a phone. Safe to share.
 */
final class Bodies {

  private final long mostBytes;
  private final HeldBytes held;
  private final Pace pace;
  private final ScheduledExecutorService watch;

  /** Bodies of at most {@code mostBytes} each. */
  Bodies(long mostBytes, Capacity capacity, Pace pace, ScheduledExecutorService watch) {
    this.mostBytes = mostBytes;
    this.held = new HeldBytes(capacity.heldBytes());
    this.watch = watch;
    this.pace = pace;
  }

  /** A body, and the end of holding it. */
  record Arriving(Reading reading, HeldBytes.Share share) {}

  /**
   * Begins to read.
   *
   * @throws Refusal if the body says to be too large
   */
  Arriving begin(Context context) {
    Request request = ServletContextRequest.getServletContextRequest(context.req());
    HeldBytes.Share share = held.share();
    Reading reading = new Reading(request, mostBytes, share);
    Request.addCompletionListener(request, failure -> share.free());
    reading.take();
    return new Arriving(reading, share);
  }

  /** Goes on until the body is there. */
  CompletableFuture<byte[]> rest(Reading reading) {
    if (!reading.whole().isDone()) {
      watch(reading, System.nanoTime());
      reading.run();
    }
    return reading.whole();
  }

  /** Looks again when the time of what has arrived is over. */
  private void watch(Reading reading, long began) {
    long left = pace.body(reading.count()).toNanos() - (System.nanoTime() - began);
    if (left <= 0) {
      reading.giveUp();
    } else {
      var next = watch.schedule(() -> watch(reading, began), left, TimeUnit.NANOSECONDS);
      reading.whole().whenComplete((bytes, failure) -> next.cancel(false));
    }
  }

  /** Bytes of all bodies held at the moment. */
  long held() {
    return held.held();
  }
}
