package dev.fillplane.job;

import dev.fillplane.trace.Trace;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** The jobs. */
final class JobTable {

  private JobTable() {}

  static void insert(Connection connection, JobRow job) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "insert into job ("
                + JobRow.COLUMNS
                + ") values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")) {
      insert.setString(1, job.id());
      insert.setString(2, job.owner().caller());
      insert.setDouble(3, job.terms().confidence());
      set(insert, 4, job.terms().deliveries().unitsPerDay());
      insert.setInt(5, job.terms().deliveries().everyDays());
      set(insert, 6, job.terms().deliveries().bagsPerPallet());
      insert.setString(7, job.terms().webhook().map(WebhookWish::url).orElse(null));
      insert.setInt(8, job.units());
      insert.setLong(9, job.createdAt().toEpochMilli());
      insert.setNull(10, Types.BIGINT);
      insert.setBoolean(11, job.cancelled());
      insert.setLong(12, job.expiresAt().toEpochMilli());
      insert.setString(13, job.owner().trace().map(Trace::parent).orElse(null));
      insert.setString(14, job.owner().trace().flatMap(Trace::state).orElse(null));
      insert.executeUpdate();
    }
  }

  private static void set(PreparedStatement statement, int column, OptionalInt number)
      throws SQLException {
    if (number.isPresent()) {
      statement.setInt(column, number.getAsInt());
    } else {
      statement.setNull(column, Types.INTEGER);
    }
  }

  static Optional<JobRow> find(Connection connection, String id) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement("select " + JobRow.COLUMNS + " from job where id = ?")) {
      select.setString(1, id);
      try (ResultSet row = select.executeQuery()) {
        return row.next() ? Optional.of(JobRow.read(row)) : Optional.empty();
      }
    }
  }

  /** Ends a job that has not ended; false if it had. */
  static boolean end(
      Connection connection, String id, boolean cancelled, Instant now, Instant expiresAt)
      throws SQLException {
    try (PreparedStatement update =
        connection.prepareStatement(
            "update job set ended_at = ?, cancelled = ?, expires_at = ?"
                + " where id = ? and ended_at is null")) {
      update.setLong(1, now.toEpochMilli());
      update.setBoolean(2, cancelled);
      update.setLong(3, expiresAt.toEpochMilli());
      update.setString(4, id);
      return update.executeUpdate() == 1;
    }
  }

  /** Forgets a job with its units. */
  static void delete(Connection connection, String id) throws SQLException {
    try (PreparedStatement delete = connection.prepareStatement("delete from job where id = ?")) {
      delete.setString(1, id);
      delete.executeUpdate();
    }
  }

  static List<String> expired(Connection connection, Instant now) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement("select id from job where expires_at <= ? order by id")) {
      select.setLong(1, now.toEpochMilli());
      try (ResultSet row = select.executeQuery()) {
        List<String> ids = new ArrayList<>();
        while (row.next()) {
          ids.add(row.getString(1));
        }
        return ids;
      }
    }
  }
}
