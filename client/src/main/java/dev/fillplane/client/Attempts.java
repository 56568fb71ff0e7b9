package dev.fillplane.client;

import java.time.Duration;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;

/** Asks, and asks again as long as that is safe and the patience lasts. */
final class Attempts {
  /** Did not arrive in time (RFC 9110 section 15.5.9), too many requests, busy. */
  private static final Set<Integer> PASSING = Set.of(408, 429, 503);

  /** The first attempt with the same Idempotency-Key is still worked on, if told when to return. */
  private static final int CONFLICT = 409;

  private final Retries retries;
  private final Time time;
  private final Random jitter;

  Attempts(Retries retries, Time time, Random jitter) {
    this.retries = retries;
    this.time = time;
    this.jitter = jitter;
  }

  <T> T run(Supplier<T> call) {
    Series series = series();
    while (true) {
      try {
        return call.get();
      } catch (ProblemException | NoAnswerException failure) {
        series.waitAfter(failure);
      }
    }
  }

  Series series() {
    return new Series();
  }

  /** Whether the failure may pass, and the same request can be sent again without harm. */
  private static boolean mayPass(RuntimeException failure) {
    if (failure instanceof ProblemException problem) {
      boolean stillTaken = problem.status() == CONFLICT && problem.retryAfter().isPresent();
      return stillTaken || (PASSING.contains(problem.status()) && !isTooMuchWork(problem));
    }
    return failure instanceof NoAnswerException silence && silence.mayPass();
  }

  /** The same request would take as long again. */
  private static boolean isTooMuchWork(ProblemException problem) {
    return problem.kind().filter("over-deadline"::equals).isPresent();
  }

  private static Optional<Duration> asked(RuntimeException failure) {
    return failure instanceof ProblemException problem ? problem.retryAfter() : Optional.empty();
  }

  /** The attempts at one thing. */
  final class Series {
    private int failures;
    private Duration waited = Duration.ZERO;

    /** Waits before the next attempt; throws the failure where there shall be none. */
    void waitAfter(RuntimeException failure) {
      failures++;
      if (failures >= retries.attempts() || !mayPass(failure)) {
        throw failure;
      }
      Duration pause = pause(asked(failure));
      waited = waited.plus(pause);
      if (waited.compareTo(retries.patience()) > 0) {
        throw failure;
      }
      time.waitFor(pause);
    }

    /** Something was answered: what fails next is a new trouble. */
    void succeeded() {
      failures = 0;
      waited = Duration.ZERO;
    }

    private Duration pause(Optional<Duration> asked) {
      // Jitter beyond what was asked for, so that not all callers come back at once.
      return asked.map(least -> least.plus(part(retries.firstPause()))).orElseGet(this::own);
    }

    private Duration own() {
      int doublings = Math.min(failures - 1, 30);
      Duration doubled = retries.firstPause().multipliedBy(1L << doublings);
      Duration longest = retries.longestPause();
      Duration half = (doubled.compareTo(longest) < 0 ? doubled : longest).dividedBy(2);
      return half.plus(part(half));
    }

    private Duration part(Duration whole) {
      return Duration.ofNanos(Math.round(whole.toNanos() * jitter.nextDouble()));
    }
  }
}
