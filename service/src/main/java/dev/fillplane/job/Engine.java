package dev.fillplane.job;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SchedulerBuilder;
import com.github.kagkarlsson.scheduler.SchedulerName;
import com.github.kagkarlsson.scheduler.logging.LogLevel;
import java.time.Duration;
import java.util.List;
import java.util.UUID;

/** An open store with the threads that work on its units. */
final class Engine implements AutoCloseable {

  private static final Duration POLL = Duration.ofMillis(500);
  private static final Duration STOP = Duration.ofSeconds(5);
  private static final int MISSED_HEARTBEATS = 4;

  /** For requests, heartbeats and polling beside the units. */
  private static final int MORE_CONNECTIONS = 8;

  private static final int OTHER_THREADS = 4;

  private final Database database;
  private final JobStore store;
  private final EndMessages messages;
  private final List<Scheduler> schedulers;

  private Engine(
      Database database, JobStore store, EndMessages messages, List<Scheduler> schedulers) {
    this.database = database;
    this.store = store;
    this.messages = messages;
    this.schedulers = schedulers;
  }

  /**
   * Opens the store and starts to work.
   *
   * @throws StoreException if it cannot be reached
   */
  static Engine start(JobSettings settings, UnitPlanner planner) {
    Database database = Database.open(settings.store(), settings.threads() + MORE_CONNECTIONS);
    try {
      return start(settings, planner, database);
    } catch (RuntimeException e) {
      database.close();
      throw e;
    }
  }

  private static Engine start(JobSettings settings, UnitPlanner planner, Database database) {
    EndMessages messages = new EndMessages(database, settings.webhooks(), settings.clock());
    Sweeper sweeper = new Sweeper(database, settings.clock());
    OtherTasks others = new OtherTasks(messages, sweeper::sweep, settings.watch());
    UnitRunner runner = new UnitRunner(database, planner, others::schedule, settings);
    JobTasks tasks = new JobTasks(runner::run);
    JobStore store = new JobStore(database, tasks, sweeper, settings.clock(), settings.kept());
    List<Scheduler> schedulers =
        List.of(units(settings, database, tasks), others(settings, database, others));
    Engine engine = new Engine(database, store, messages, schedulers);
    try {
      schedulers.forEach(Scheduler::start);
      return engine;
    } catch (RuntimeException e) {
      engine.close();
      throw e;
    }
  }

  private static Scheduler units(JobSettings settings, Database database, JobTasks tasks) {
    SchedulerBuilder builder =
        usual(Scheduler.create(database.source(), tasks.units()), settings)
            .tableName(JobTasks.TABLE)
            .threads(settings.threads());
    if (settings.store().shared()) {
      // Nodes skip rows that another is taking, and take few at once, so that all end together.
      builder.pollUsingLockAndFetch(1.0, 2.0);
    }
    return builder.build();
  }

  private static Scheduler others(JobSettings settings, Database database, OtherTasks tasks) {
    return usual(Scheduler.create(database.source(), tasks.messages()), settings)
        .tableName(OtherTasks.TABLE)
        .startTasks(tasks.sweep())
        .serializer(new PlainText())
        .threads(OTHER_THREADS)
        .failureLogging(LogLevel.DEBUG, false)
        .build();
  }

  private static SchedulerBuilder usual(SchedulerBuilder builder, JobSettings settings) {
    return builder
        .pollingInterval(POLL)
        .heartbeatInterval(settings.heartbeat())
        .missedHeartbeatsLimit(MISSED_HEARTBEATS)
        .shutdownMaxWait(STOP)
        .clock(settings.clock()::instant)
        .schedulerName(new SchedulerName.Fixed(UUID.randomUUID().toString()));
  }

  JobStore store() {
    return store;
  }

  /** Looks for work at once. */
  void wake() {
    schedulers.forEach(Scheduler::triggerCheckForDueExecutions);
  }

  @Override
  public void close() {
    schedulers.forEach(Scheduler::stop);
    messages.close();
    database.close();
  }
}
