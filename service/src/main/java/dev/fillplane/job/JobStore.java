package dev.fillplane.job;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;

/** Takes, tells, cancels and forgets jobs. A caller sees none but its own. */
final class JobStore {

  private final Database database;
  private final JobTasks tasks;
  private final Sweeper sweeper;
  private final KeyedOnce keyed;
  private final Clock clock;
  private final Duration kept;

  JobStore(Database database, JobTasks tasks, Sweeper sweeper, Clock clock, Duration kept) {
    this.database = database;
    this.tasks = tasks;
    this.sweeper = sweeper;
    this.keyed = new KeyedOnce(database, clock);
    this.clock = clock;
    this.kept = kept;
  }

  TakenJob accept(
      JobOwner owner,
      JobTerms terms,
      List<UnitRequest> units,
      Optional<Keyed> key,
      Function<JobStatus, byte[]> told) {
    return keyed.take(
        owner.caller(), key, connection -> insert(connection, owner, terms, units, told));
  }

  private TakenJob insert(
      Connection connection,
      JobOwner owner,
      JobTerms terms,
      List<UnitRequest> units,
      Function<JobStatus, byte[]> told)
      throws SQLException {
    Instant now = Instant.ofEpochMilli(clock.millis());
    JobRow job =
        new JobRow(
            UUID.randomUUID().toString(),
            owner,
            terms,
            units.size(),
            now,
            Optional.empty(),
            false,
            now.plus(kept));
    JobTable.insert(connection, job);
    UnitTable.insert(connection, job.id(), units);
    tasks.schedule(connection, job.id(), units.size());
    return new TakenJob(job.id(), told.apply(status(job, 0, 0, List.of())), false);
  }

  Optional<JobStatus> status(String caller, String id) {
    return database.run(
        connection -> {
          Optional<JobRow> job = find(connection, caller, id);
          if (job.isEmpty()) {
            return Optional.empty();
          }
          int[] counts = UnitTable.counts(connection, id);
          int failed = counts[UnitState.FAILED.ordinal()];
          return Optional.of(
              status(
                  job.get(),
                  counts[UnitState.PLANNED.ordinal()],
                  failed,
                  failed == 0
                      ? List.of()
                      : UnitTable.failures(connection, id, JobStatus.FAILURES)));
        });
  }

  long waiting() {
    return database.run(UnitTable::waiting);
  }

  private static JobStatus status(
      JobRow job, int planned, int failed, List<JobStatus.FailedUnit> failures) {
    return new JobStatus(
        job.id(),
        job.state(planned, failed),
        planned + failed,
        job.units(),
        failed,
        failures,
        job.createdAt(),
        job.endedAt(),
        job.expiresAt());
  }

  Optional<List<UnitRow>> rows(String caller, String id, int from, int most) {
    return database.run(
        connection ->
            find(connection, caller, id).isEmpty()
                ? Optional.empty()
                : Optional.of(UnitTable.rows(connection, id, from, most)));
  }

  Optional<JobNeeds> needs(String caller, String id) {
    return database.run(
        connection -> {
          Optional<JobRow> job = find(connection, caller, id);
          return job.isEmpty()
              ? Optional.empty()
              : Optional.of(
                  new JobNeeds(
                      job.get().terms(), job.get().units(), UnitTable.needs(connection, id)));
        });
  }

  /** Cancels a job that has not ended, forgets one that has; false if there is none. */
  boolean delete(String caller, String id) {
    Instant now = Instant.now(clock);
    return database.change(
        connection -> {
          if (find(connection, caller, id).isEmpty()) {
            return false;
          }
          JobTasks.drop(connection, id);
          // All units may be done though nobody has noted the end yet; then there is no cancelling.
          if (!UnitTable.someWait(connection, id)
              || !JobTable.end(connection, id, true, now, now.plus(kept))) {
            JobTable.delete(connection, id);
          }
          return true;
        });
  }

  private Optional<JobRow> find(Connection connection, String caller, String id)
      throws SQLException {
    return JobTable.find(connection, id)
        .filter(job -> job.owner().caller().equals(caller))
        .filter(job -> job.expiresAt().isAfter(Instant.now(clock)));
  }

  /** Forgets what has expired, now. */
  void sweep() {
    sweeper.sweep();
  }
}
