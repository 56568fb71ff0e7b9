package dev.fillplane.job;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * Takes a request with a key once (draft-ietf-httpapi-idempotency-key-header-07). The key is taken
 * first, so that a second request meanwhile sees it; the answer is kept in the transaction that
 * takes the request. A key whose holder has not answered for a while, since its node was killed, is
 * taken over; a holder that comes late then changes nothing.
 */
final class KeyedOnce {

  /** How long an answer is kept. */
  static final Duration KEPT = Duration.ofHours(24);

  /** A holder without an answer for so long is gone. */
  static final Duration PATIENCE = Duration.ofMinutes(2);

  private final Database database;
  private final Clock clock;

  KeyedOnce(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  /** Takes a request, in one transaction. */
  interface Taking {
    TakenJob take(Connection connection) throws SQLException;
  }

  /**
   * Takes a request, or answers as the first time.
   *
   * @throws KeyConflict if the key is in use
   */
  TakenJob take(String caller, Optional<Keyed> keyed, Taking taking) {
    return keyed.isEmpty()
        ? database.change(taking::take)
        : taken(caller, keyed.get()).orElseGet(() -> hold(caller, keyed.get(), taking));
  }

  private Optional<TakenJob> taken(String caller, Keyed keyed) {
    Optional<KeyTable.Row> row =
        database.run(connection -> KeyTable.find(connection, caller, keyed.key()));
    if (row.isEmpty()) {
      return Optional.empty();
    }
    if (old(row.get())) {
      free(caller, keyed, row.get());
      return Optional.empty();
    }
    if (!row.get().digest().equals(keyed.digest())) {
      throw new KeyConflict(false);
    }
    return Optional.of(row.get().answer().orElseThrow(() -> new KeyConflict(true)));
  }

  /** One that is answered meanwhile is not old any more, and stays. */
  private void free(String caller, Keyed keyed, KeyTable.Row row) {
    Instant keptFrom = Instant.now(clock).minus(KEPT);
    database.change(
        connection -> {
          KeyTable.deleteBefore(connection, keptFrom.plusMillis(1));
          KeyTable.release(connection, caller, keyed.key(), row.holder());
          return null;
        });
  }

  private boolean old(KeyTable.Row row) {
    Duration age = Duration.between(row.takenAt(), Instant.now(clock));
    return age.compareTo(row.answer().isPresent() ? KEPT : PATIENCE) >= 0;
  }

  private TakenJob hold(String caller, Keyed keyed, Taking taking) {
    String holder = UUID.randomUUID().toString();
    Instant now = Instant.now(clock);
    if (!database.run(connection -> KeyTable.take(connection, caller, keyed, holder, now))) {
      return taken(caller, keyed).orElseThrow(() -> new KeyConflict(true));
    }
    try {
      return database.change(
          connection -> {
            TakenJob answer = taking.take(connection);
            if (!KeyTable.answer(connection, caller, keyed.key(), holder, answer)) {
              throw new KeyConflict(true);
            }
            return answer;
          });
    } catch (RuntimeException e) {
      release(caller, keyed, holder, e);
      throw e;
    }
  }

  private void release(String caller, Keyed keyed, String holder, RuntimeException cause) {
    try {
      database.change(
          connection -> {
            KeyTable.release(connection, caller, keyed.key(), holder);
            return null;
          });
    } catch (StoreException e) {
      cause.addSuppressed(e);
    }
  }
}
