package dev.fillplane.job;

import java.time.Instant;
import java.util.Optional;
import org.slf4j.MDC;

/**
 * Works on one unit, and ends its job after the last. May run twice for the same unit, at once
 * even: the first answer stays.
 */
final class UnitRunner {

  private static final String JOB = "job";

  private final Database database;
  private final UnitPlanner planner;
  private final JobEnd end;
  private final JobSettings settings;

  UnitRunner(Database database, UnitPlanner planner, JobEnd end, JobSettings settings) {
    this.database = database;
    this.planner = planner;
    this.end = end;
    this.settings = settings;
  }

  /** What is logged meanwhile tells the job. */
  void run(String job, int unit) {
    settings.watch().unitBegun();
    MDC.put(JOB, job);
    try {
      work(job, unit);
    } finally {
      MDC.remove(JOB);
      settings.watch().unitEnded();
    }
  }

  private void work(String job, int unit) {
    Optional<byte[]> request = database.run(connection -> UnitTable.waiting(connection, job, unit));
    if (request.isPresent()) {
      UnitAnswer answer = planner.plan(request.get());
      if (database.change(connection -> UnitTable.answer(connection, job, unit, answer))) {
        settings.watch().unitAnswered(answer.need().isPresent());
      }
    }
    // Only now, when the answer is there for all to see: of the last two, one sees the other's.
    if (!database.run(connection -> UnitTable.someWait(connection, job))) {
      endJob(job);
    }
  }

  private void endJob(String id) {
    Instant now = Instant.now(settings.clock());
    database.change(
        connection -> {
          if (JobTable.end(connection, id, false, now, now.plus(settings.kept()))
              && JobTable.find(connection, id).flatMap(job -> job.terms().webhook()).isPresent()) {
            end.ended(connection, id);
          }
          return null;
        });
  }
}
