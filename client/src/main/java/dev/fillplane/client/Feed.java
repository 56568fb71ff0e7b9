package dev.fillplane.client;

import java.io.IOException;
import java.io.StreamCorruptedException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/**
 * The requests of a stream on their way: those not answered yet are kept, so that a new exchange
 * can send them again. Two threads use it, the one that sends and the one that reads.
 */
final class Feed {
  private final Iterator<byte[]> source;
  private final int ahead;
  private final Object pulling = new Object();
  private final List<byte[]> unanswered = new ArrayList<>();
  private int sent;
  private int exchange;
  private boolean exhausted;
  private Optional<RuntimeException> failure = Optional.empty();

  Feed(Iterator<byte[]> source, int ahead) {
    this.source = source;
    this.ahead = ahead;
  }

  /** The requests for a new exchange, which ends what the last one still sends. */
  synchronized LineExchange.Lines again() {
    stop();
    sent = 0;
    int mine = exchange;
    return new LineExchange.Lines() {
      @Override
      public Optional<byte[]> next() throws InterruptedException {
        return Feed.this.next(mine);
      }

      @Override
      public boolean owed() {
        return Feed.this.owed();
      }
    };
  }

  /** Ends what is being sent. */
  synchronized void stop() {
    exchange++;
    notifyAll();
  }

  /**
   * Strikes off the oldest request.
   *
   * @throws IOException if none was sent that could have been answered
   */
  synchronized void answered() throws IOException {
    if (sent == 0) {
      throw new StreamCorruptedException("An answer to nothing that was asked.");
    }
    unanswered.remove(0);
    sent--;
    notifyAll();
  }

  synchronized boolean done() {
    return exhausted && unanswered.isEmpty();
  }

  synchronized Optional<RuntimeException> failure() {
    return failure;
  }

  private Optional<byte[]> next(int mine) throws InterruptedException {
    Optional<byte[]> next = unsent(mine);
    while (next.isEmpty() && mayPull(mine)) {
      pull(mine);
      next = unsent(mine);
    }
    return next;
  }

  /** The next request that is known and not sent; waits while too many are unanswered. */
  private synchronized Optional<byte[]> unsent(int mine) throws InterruptedException {
    while (mine == exchange && sent == unanswered.size() && sent >= ahead) {
      wait();
    }
    if (mine != exchange || sent == unanswered.size()) {
      return Optional.empty();
    }
    return Optional.of(unanswered.get(sent++));
  }

  /** Whether something is sent and not answered, or the end is. */
  synchronized boolean owed() {
    return sent > 0 || exhausted;
  }

  private synchronized boolean mayPull(int mine) {
    return mine == exchange && !exhausted;
  }

  /** Takes one from the source; not under the lock of the state, for the source may be slow. */
  private void pull(int mine) {
    synchronized (pulling) {
      if (mayPull(mine)) {
        try {
          add(source.hasNext() ? Optional.of(source.next()) : Optional.empty());
        } catch (RuntimeException e) {
          fail(e);
        } catch (Error e) {
          fail(new IllegalStateException("The source of requests failed.", e));
        }
      }
    }
  }

  private synchronized void add(Optional<byte[]> line) {
    line.ifPresentOrElse(unanswered::add, () -> exhausted = true);
  }

  private synchronized void fail(RuntimeException e) {
    failure = Optional.of(e);
    exhausted = true;
  }
}
