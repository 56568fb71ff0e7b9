package dev.fillplane.job;

import java.time.Clock;
import java.time.Instant;

/** Forgets jobs that have expired and keys that are old. */
final class Sweeper {

  private final Database database;
  private final Clock clock;

  Sweeper(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  void sweep() {
    Instant now = Instant.now(clock);
    for (String id : database.run(connection -> JobTable.expired(connection, now))) {
      database.change(
          connection -> {
            JobTasks.drop(connection, id);
            JobTable.delete(connection, id);
            return null;
          });
    }
    database.change(
        connection -> {
          KeyTable.deleteBefore(connection, now.minus(KeyedOnce.KEPT));
          return null;
        });
  }
}
