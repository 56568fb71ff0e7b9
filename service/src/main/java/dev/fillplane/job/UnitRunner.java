package dev.fillplane.job;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * Works on one unit, and ends its job after the last. May run twice for the same unit, at once
 * even: the first answer stays.
 */
final class UnitRunner {

  private final Database database;
  private final UnitPlanner planner;
  private final JobEnd end;
  private final Clock clock;
  private final Duration kept;

  UnitRunner(Database database, UnitPlanner planner, JobEnd end, Clock clock, Duration kept) {
    this.database = database;
    this.planner = planner;
    this.end = end;
    this.clock = clock;
    this.kept = kept;
  }

  void run(String job, int unit) {
    Optional<byte[]> request = database.run(connection -> UnitTable.waiting(connection, job, unit));
    if (request.isPresent()) {
      UnitAnswer answer = planner.plan(request.get());
      database.change(
          connection -> {
            UnitTable.answer(connection, job, unit, answer);
            return null;
          });
    }
    // Only now, when the answer is there for all to see: of the last two, one sees the other's.
    if (!database.run(connection -> UnitTable.someWait(connection, job))) {
      endJob(job);
    }
  }

  private void endJob(String id) {
    Instant now = Instant.now(clock);
    database.change(
        connection -> {
          if (JobTable.end(connection, id, false, now, now.plus(kept))
              && JobTable.find(connection, id).flatMap(job -> job.terms().webhook()).isPresent()) {
            end.ended(connection, id);
          }
          return null;
        });
  }
}
