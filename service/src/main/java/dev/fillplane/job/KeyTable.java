package dev.fillplane.job;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;

/** Requests that were taken with a key, with their answers. */
final class KeyTable {

  /** How the standard calls a second row with the same key. */
  private static final String TAKEN = "23505";

  private KeyTable() {}

  /**
   * A row.
   *
   * @param holder who takes or took the request
   * @param answer empty until it is taken
   */
  record Row(String digest, String holder, Instant takenAt, Optional<TakenJob> answer) {}

  static Optional<Row> find(Connection connection, String caller, String key) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "select digest, holder, taken_at, answer, location from idempotency"
                + " where caller = ? and idempotency_key = ?")) {
      select.setString(1, caller);
      select.setString(2, key);
      try (ResultSet row = select.executeQuery()) {
        if (!row.next()) {
          return Optional.empty();
        }
        byte[] answer = row.getBytes(4);
        Optional<TakenJob> accepted =
            answer == null
                ? Optional.empty()
                : Optional.of(new TakenJob(row.getString(5), answer, true));
        return Optional.of(
            new Row(
                row.getString(1),
                row.getString(2),
                Instant.ofEpochMilli(row.getLong(3)),
                accepted));
      }
    }
  }

  /** Takes a key; false if somebody has it. */
  static boolean take(Connection connection, String caller, Keyed keyed, String holder, Instant now)
      throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "insert into idempotency (caller, idempotency_key, digest, holder, taken_at)"
                + " values (?, ?, ?, ?, ?)")) {
      insert.setString(1, caller);
      insert.setString(2, keyed.key());
      insert.setString(3, keyed.digest());
      insert.setString(4, holder);
      insert.setLong(5, now.toEpochMilli());
      insert.executeUpdate();
      return true;
    } catch (SQLException e) {
      if (TAKEN.equals(e.getSQLState())) {
        return false;
      }
      throw e;
    }
  }

  /** Keeps the answer; false if the holder has lost the key. */
  static boolean answer(
      Connection connection, String caller, String key, String holder, TakenJob answer)
      throws SQLException {
    try (PreparedStatement update =
        connection.prepareStatement(
            "update idempotency set answer = ?, location = ?"
                + " where caller = ? and idempotency_key = ? and holder = ?")) {
      update.setBytes(1, answer.json());
      update.setString(2, answer.id());
      update.setString(3, caller);
      update.setString(4, key);
      update.setString(5, holder);
      return update.executeUpdate() == 1;
    }
  }

  /** Gives a key free that a holder has and has not answered; an answer stays. */
  static void release(Connection connection, String caller, String key, String holder)
      throws SQLException {
    try (PreparedStatement delete =
        connection.prepareStatement(
            "delete from idempotency"
                + " where caller = ? and idempotency_key = ? and holder = ? and answer is null")) {
      delete.setString(1, caller);
      delete.setString(2, key);
      delete.setString(3, holder);
      delete.executeUpdate();
    }
  }

  static void deleteBefore(Connection connection, Instant time) throws SQLException {
    try (PreparedStatement delete =
        connection.prepareStatement("delete from idempotency where taken_at < ?")) {
      delete.setLong(1, time.toEpochMilli());
      delete.executeUpdate();
    }
  }
}
