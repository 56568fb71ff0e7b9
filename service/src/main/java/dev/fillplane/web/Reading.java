package dev.fillplane.web;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;

/**
 * A body on its way in. It holds a thread only while bytes are there to be taken, and no more
 * memory than has arrived.
 */
final class Reading implements Runnable {

  private static final int FIRST_BYTES = 8_192;

  private final Request request;
  private final long mostBytes;
  private final HeldBytes.Share share;
  private final CompletableFuture<byte[]> whole = new CompletableFuture<>();
  private byte[] bytes;
  private volatile int count;

  /**
   * Nothing is read yet.
   *
   * @throws Refusal if the body says to be larger than {@code mostBytes}
   */
  Reading(Request request, long mostBytes, HeldBytes.Share share) {
    if (request.getLength() > mostBytes) {
      throw tooLarge();
    }
    this.request = request;
    this.mostBytes = mostBytes;
    this.share = share;
    this.bytes = new byte[(int) Math.min(FIRST_BYTES, Math.max(0, request.getLength()))];
  }

  /** The whole body, or the {@link Refusal} of it. */
  CompletableFuture<byte[]> whole() {
    return whole;
  }

  /** Whether the whole body is there. */
  boolean arrived() {
    return whole.isDone() && !whole.isCompletedExceptionally();
  }

  /** How much has arrived. */
  int count() {
    return count;
  }

  /** Takes what is there; whether that was the end of it. */
  boolean take() {
    try {
      Content.Chunk chunk = request.read();
      while (chunk != null && !whole.isDone()) {
        take(chunk);
        chunk = whole.isDone() ? null : request.read();
      }
    } catch (RuntimeException e) {
      whole.completeExceptionally(e);
    }
    return whole.isDone();
  }

  private void take(Content.Chunk chunk) {
    if (Content.Chunk.isFailure(chunk)) {
      whole.completeExceptionally(refusal(chunk.getFailure()));
      return;
    }
    try {
      add(chunk.getByteBuffer());
    } finally {
      chunk.release();
    }
    if (chunk.isLast()) {
      whole.complete(bytes.length == count ? bytes : Arrays.copyOf(bytes, count));
    }
  }

  private void add(ByteBuffer more) {
    int size = more.remaining();
    if (count + (long) size > mostBytes) {
      throw tooLarge();
    }
    share.add(size);
    if (count + size > bytes.length) {
      bytes = Arrays.copyOf(bytes, room(count + size));
    }
    more.get(bytes, count, size);
    count += size;
  }

  /** Twice as much each time, and never more than was announced. */
  private int room(int needed) {
    long most = request.getLength() >= 0 ? request.getLength() : mostBytes;
    return (int) Math.max(needed, Math.min(most, 2L * bytes.length));
  }

  /** Goes on whenever more arrives. */
  @Override
  public void run() {
    if (!take()) {
      request.demand(this);
    }
  }

  /** Ends it because it comes too slowly. */
  void giveUp() {
    whole.completeExceptionally(
        Refusal.of(Problem.Kind.TIMED_OUT, "The body comes too slowly; send it faster."));
  }

  private static RuntimeException refusal(Throwable failure) {
    for (Throwable at = failure; at != null; at = at.getCause()) {
      if (at instanceof TimeoutException) {
        return Refusal.of(Problem.Kind.TIMED_OUT, "Send the body faster.");
      }
    }
    return Refusal.of(Problem.Kind.BAD_REQUEST, "The body did not arrive whole.");
  }

  private static Refusal tooLarge() {
    return Refusal.of(Problem.Kind.TOO_LARGE, "See limits in /v1/capabilities.");
  }
}
