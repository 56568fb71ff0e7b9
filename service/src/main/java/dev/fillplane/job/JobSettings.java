package dev.fillplane.job;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;

/**
 * How jobs are worked on.
 *
 * @param store where they are kept
 * @param threads units that this node works on at once
 * @param kept how long a job is kept after it ended, and at most before
 * @param heartbeat how often a node says that it is alive; after four without, others take its
 *     units
 * @param clock for what is kept and expires
 * @param webhooks how receivers are told that a job has ended
 * @param watch hears what this node does
 */
public record JobSettings(
    StoreAddress store,
    int threads,
    Duration kept,
    Duration heartbeat,
    Clock clock,
    WebhookSettings webhooks,
    JobWatch watch) {

  /** Most units of a job. */
  public static final int MOST_UNITS = 10_000;

  /** How long a job is kept unless told: seven days. */
  public static final Duration KEPT = Duration.ofDays(7);

  /** In a store, all else as usual. */
  public static JobSettings in(StoreAddress store) {
    int threads = Runtime.getRuntime().availableProcessors();
    return new JobSettings(
        store,
        threads,
        KEPT,
        Duration.ofSeconds(2),
        Clock.systemUTC(),
        WebhookSettings.usual(),
        JobWatch.NONE);
  }

  /**
   * In a database, if one is told, else in a folder.
   *
   * @throws IllegalArgumentException if the database is told in a way that is not known
   */
  public static JobSettings in(Path folder, Optional<String> database) {
    return in(database.map(StoreAddress::postgres).orElseGet(() -> StoreAddress.folder(folder)));
  }

  /** The same with other threads. */
  public JobSettings withThreads(int count) {
    return new JobSettings(store, count, kept, heartbeat, clock, webhooks, watch);
  }

  /** The same with other receivers. */
  public JobSettings withWebhooks(WebhookSettings other) {
    return new JobSettings(store, threads, kept, heartbeat, clock, other, watch);
  }

  /** The same with somebody who hears what this node does. */
  public JobSettings withWatch(JobWatch other) {
    return new JobSettings(store, threads, kept, heartbeat, clock, webhooks, other);
  }
}
