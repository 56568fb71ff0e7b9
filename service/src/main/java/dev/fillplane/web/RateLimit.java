package dev.fillplane.web;

import dev.fillplane.web.key.Key;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How many requests a caller may make in a minute, told before it bites by the headers of the draft
 * draft-ietf-httpapi-ratelimit-headers. Counts keys, or addresses where no keys are asked for.
 */
final class RateLimit {

  private static final Duration WINDOW = Duration.ofMinutes(1);
  private static final long NANOS = 1_000_000_000;

  /** Callers remembered; the one that was quiet for longest is forgotten first. */
  private static final int CALLERS = 10_000;

  private final int usual;
  private final TimeMeter time;
  private final Map<String, Bucket> buckets =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
          return size() > CALLERS;
        }
      };

  /** {@code usual} requests for who has no number of his own; 0 for no limit. */
  RateLimit(int usual, TimeMeter time) {
    this.usual = usual;
    this.time = time;
  }

  /** Counts a request of {@code key}. */
  void count(Context context, Key key) {
    count(context, key.id(), key.perMinute().orElse(usual));
  }

  /** Counts a request from {@code address}. */
  void count(Context context, String address) {
    count(context, address, usual);
  }

  /**
   * Counts a request and tells what is left.
   *
   * @throws Refusal if nothing is
   */
  private void count(Context context, String who, int perMinute) {
    if (perMinute <= 0) {
      return;
    }
    ConsumptionProbe probe = bucket(who, perMinute).tryConsumeAndReturnRemaining(1);
    long reset = seconds(probe.getNanosToWaitForReset());
    context.header("RateLimit-Policy", "\"requests\";q=" + perMinute + ";w=" + WINDOW.toSeconds());
    context.header("RateLimit", "\"requests\";r=" + probe.getRemainingTokens() + ";t=" + reset);
    if (!probe.isConsumed()) {
      String wait = String.valueOf(seconds(probe.getNanosToWaitForRefill()));
      throw new Refusal(
          Problem.of(
              Problem.Kind.TOO_MANY_REQUESTS,
              perMinute + " requests a minute are granted; try again in " + wait + " seconds."),
          Map.of("Retry-After", wait));
    }
  }

  /** A key whose number was edited begins anew. */
  private Bucket bucket(String who, int perMinute) {
    synchronized (buckets) {
      return buckets.computeIfAbsent(who + " " + perMinute, unused -> fresh(perMinute));
    }
  }

  private Bucket fresh(int perMinute) {
    return Bucket.builder()
        .addLimit(limit -> limit.capacity(perMinute).refillIntervally(perMinute, WINDOW))
        .withCustomTimePrecision(time)
        .build();
  }

  private static long seconds(long nanos) {
    return (nanos + NANOS - 1) / NANOS;
  }
}
