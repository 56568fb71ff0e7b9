package dev.fillplane.job;

import dev.fillplane.estimate.DeliveryWish;
import dev.fillplane.trace.Trace;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;

/** A job as it is kept. */
record JobRow(
    String id,
    JobOwner owner,
    JobTerms terms,
    int units,
    Instant createdAt,
    Optional<Instant> endedAt,
    boolean cancelled,
    Instant expiresAt) {

  /** Columns in the order of {@link #read}. */
  static final String COLUMNS =
      "id, caller, confidence, units_per_day, every_days, bags_per_pallet, webhook, units,"
          + " created_at, ended_at, cancelled, expires_at, traceparent, tracestate";

  static JobRow read(ResultSet row) throws SQLException {
    DeliveryWish deliveries = new DeliveryWish(number(row, 4), row.getInt(5), number(row, 6));
    Optional<WebhookWish> webhook = Optional.ofNullable(row.getString(7)).map(WebhookWish::new);
    long ended = row.getLong(10);
    Optional<Instant> endedAt =
        row.wasNull() ? Optional.empty() : Optional.of(Instant.ofEpochMilli(ended));
    return new JobRow(
        row.getString(1),
        new JobOwner(row.getString(2), trace(row)),
        new JobTerms(row.getDouble(3), deliveries, webhook),
        row.getInt(8),
        Instant.ofEpochMilli(row.getLong(9)),
        endedAt,
        row.getBoolean(11),
        Instant.ofEpochMilli(row.getLong(12)));
  }

  private static Optional<Trace> trace(ResultSet row) throws SQLException {
    Optional<String> parent = Optional.ofNullable(row.getString(13));
    Optional<String> state = Optional.ofNullable(row.getString(14));
    return parent.map(told -> Trace.of(Optional.of(told), state));
  }

  private static OptionalInt number(ResultSet row, int column) throws SQLException {
    int number = row.getInt(column);
    return row.wasNull() ? OptionalInt.empty() : OptionalInt.of(number);
  }

  /** The state, given how many units are planned and how many have failed. */
  JobState state(int planned, int failed) {
    if (cancelled) {
      return JobState.CANCELLED;
    }
    if (planned + failed == units) {
      return planned == 0 ? JobState.FAILED : JobState.FINISHED;
    }
    return planned + failed == 0 ? JobState.QUEUED : JobState.RUNNING;
  }
}
