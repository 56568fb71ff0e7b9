package dev.fillplane.job;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SchedulerBuilder;
import com.github.kagkarlsson.scheduler.SchedulerName;
import java.time.Duration;
import java.util.UUID;

/** An open store with the threads that work on its units. */
final class Engine implements AutoCloseable {

  private static final Duration POLL = Duration.ofMillis(500);
  private static final Duration STOP = Duration.ofSeconds(5);
  private static final int MISSED_HEARTBEATS = 4;

  /** For requests, heartbeats and polling beside the units. */
  private static final int MORE_CONNECTIONS = 6;

  private final Database database;
  private final JobStore store;
  private final Scheduler scheduler;

  private Engine(Database database, JobStore store, Scheduler scheduler) {
    this.database = database;
    this.store = store;
    this.scheduler = scheduler;
  }

  /**
   * Opens the store and starts to work.
   *
   * @throws StoreException if it cannot be reached
   */
  static Engine start(JobSettings settings, UnitPlanner planner, JobEnd end) {
    Database database = Database.open(settings.store(), settings.threads() + MORE_CONNECTIONS);
    UnitRunner runner = new UnitRunner(database, planner, end, settings.clock(), settings.kept());
    JobStore[] store = new JobStore[1];
    JobTasks tasks = new JobTasks(runner::run, () -> store[0].sweep());
    store[0] = new JobStore(database, tasks, settings.clock(), settings.kept());
    Scheduler scheduler = scheduler(settings, database, tasks);
    scheduler.start();
    return new Engine(database, store[0], scheduler);
  }

  private static Scheduler scheduler(JobSettings settings, Database database, JobTasks tasks) {
    SchedulerBuilder builder =
        Scheduler.create(database.source(), tasks.units())
            .startTasks(tasks.sweep())
            .threads(settings.threads())
            .pollingInterval(POLL)
            .heartbeatInterval(settings.heartbeat())
            .missedHeartbeatsLimit(MISSED_HEARTBEATS)
            .shutdownMaxWait(STOP)
            .schedulerName(new SchedulerName.Fixed(UUID.randomUUID().toString()));
    if (settings.store().shared()) {
      // Nodes skip rows that another is taking, and take few at once, so that all end together.
      builder.pollUsingLockAndFetch(1.0, 2.0);
    }
    return builder.build();
  }

  JobStore store() {
    return store;
  }

  /** Looks for work at once. */
  void wake() {
    scheduler.triggerCheckForDueExecutions();
  }

  @Override
  public void close() {
    scheduler.stop();
    database.close();
  }
}
