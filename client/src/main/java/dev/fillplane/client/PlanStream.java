package dev.fillplane.client;

import dev.fillplane.client.generated.model.PlanRequest;
import java.io.IOException;
import java.net.http.HttpTimeoutException;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Optional;

/**
 * Plans of many units, in the order of their requests, from one exchange of lines with the service.
 *
 * <p>The flow is held back from both ends: while the caller takes no answer the service stops, and
 * while the service works no request is taken from the caller's iterator. One answer and at most
 * {@link #AHEAD} unanswered requests are in memory.
 *
 * <p>An exchange that breaks off, or finds the service busy, is opened again with the requests that
 * are not answered yet, as {@link Retries} says; each answer starts their count anew. So every
 * request is answered once or the stream ends with an exception.
 *
 * <p>For one thread, but any may {@link #close} it: the work of the service ends, and {@link
 * #hasNext} is false.
 */
public final class PlanStream implements Iterator<PlanLine>, AutoCloseable {

  /** How many requests may be sent whose answers the caller has not taken. */
  public static final int AHEAD = 32;

  /** Opens an exchange that sends lines. */
  interface Opening {
    LineExchange open(LineExchange.Lines lines) throws IOException;
  }

  private final Feed feed;
  private final Opening opening;
  private final Attempts.Series attempts;
  private final Time time;
  private Optional<PlanLine> ready = Optional.empty();
  private long answered;
  private volatile Optional<LineExchange> exchange = Optional.empty();
  private volatile boolean ended;

  PlanStream(Iterator<PlanRequest> requests, Opening opening, Attempts.Series attempts, Time time) {
    this.feed = new Feed(PlanJson.lines(requests), AHEAD);
    this.opening = opening;
    this.attempts = attempts;
    this.time = time;
  }

  /**
   * Whether there is another answer; waits for it.
   *
   * @throws ProblemException if the service refuses the stream
   * @throws NoAnswerException if answers stay away
   * @throws RuntimeException what the iterator of requests threw, after all answers before it
   */
  @Override
  public boolean hasNext() {
    while (ready.isEmpty() && !ended) {
      try {
        take(read());
      } catch (ProblemException | NoAnswerException failure) {
        reopenAfter(failure);
      }
    }
    return ready.isPresent() && !ended;
  }

  @Override
  public PlanLine next() {
    if (!hasNext()) {
      throw new NoSuchElementException();
    }
    PlanLine line = ready.orElseThrow();
    ready = Optional.empty();
    return line;
  }

  /** How many lines have been answered, taken or not. */
  public long answered() {
    return answered;
  }

  @Override
  public void close() {
    ended = true;
    feed.stop();
    exchange.ifPresent(LineExchange::close);
  }

  private Optional<byte[]> read() {
    try {
      if (exchange.isEmpty()) {
        exchange = Optional.of(opening.open(feed.again()));
      }
      if (ended) {
        close();
      }
      return exchange.get().nextLine(time.now());
    } catch (HttpTimeoutException e) {
      throw new NoAnswerException("The service did not answer in time.", e);
    } catch (IOException e) {
      throw new NoAnswerException("The service cannot be reached.", e);
    }
  }

  private void take(Optional<byte[]> line) {
    if (line.isPresent()) {
      accept(line.get());
    } else if (feed.done()) {
      end();
    } else {
      throw StreamEnd.broken(new IOException("The stream ended before its last answer."));
    }
  }

  private void accept(byte[] line) {
    try {
      PlanLine answer = PlanJson.answer(answered + 1, line);
      answer.problem().ifPresent(StreamEnd::check);
      feed.answered();
      ready = Optional.of(answer);
      answered++;
      attempts.succeeded();
    } catch (IOException e) {
      throw new NoAnswerException("The service's answer cannot be read.", e);
    }
  }

  private void reopenAfter(RuntimeException failure) {
    if (ended) {
      return;
    }
    if (feed.done()) {
      end();
      return;
    }
    exchange.ifPresent(LineExchange::close);
    exchange = Optional.empty();
    if (StreamEnd.isTired(failure) && !feed.owed()) {
      return; // The source was slow, which is no trouble of the service.
    }
    try {
      attempts.waitAfter(failure);
    } catch (RuntimeException last) {
      close();
      throw last;
    }
  }

  /** All is answered; the source may have failed after that. */
  private void end() {
    close();
    if (feed.failure().isPresent()) {
      throw feed.failure().get();
    }
  }
}
