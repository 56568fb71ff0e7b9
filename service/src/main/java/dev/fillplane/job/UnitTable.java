package dev.fillplane.job;

import dev.fillplane.estimate.PooledOrder;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The units of jobs, keyed by job and unit. */
final class UnitTable {

  private static final int BATCH = 100;

  private UnitTable() {}

  static void insert(Connection connection, String job, List<UnitRequest> units)
      throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "insert into unit (job, unit, reference, state, request) values (?, ?, ?, ?, ?)")) {
      for (int i = 0; i < units.size(); i++) {
        insert.setString(1, job);
        insert.setInt(2, i);
        insert.setString(3, units.get(i).reference());
        insert.setInt(4, UnitState.WAITING.ordinal());
        insert.setBytes(5, units.get(i).packed());
        insert.addBatch();
        if (i % BATCH == BATCH - 1 || i == units.size() - 1) {
          insert.executeBatch();
        }
      }
    }
  }

  /** The request of a unit that waits; empty where it is done, or its job wants no more. */
  static Optional<byte[]> waiting(Connection connection, String job, int unit) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "select u.request from unit u join job j on j.id = u.job"
                + " where u.job = ? and u.unit = ? and u.state = ? and not j.cancelled")) {
      select.setString(1, job);
      select.setInt(2, unit);
      select.setInt(3, UnitState.WAITING.ordinal());
      try (ResultSet row = select.executeQuery()) {
        return row.next() ? Optional.of(Packed.unpack(row.getBytes(1))) : Optional.empty();
      }
    }
  }

  /** Keeps the answer of a unit that still waits; false if somebody was before. */
  static boolean answer(Connection connection, String job, int unit, UnitAnswer answer)
      throws SQLException {
    try (PreparedStatement update =
        connection.prepareStatement(
            "update unit set state = ?, answer = ?, need = ?, request = null"
                + " where job = ? and unit = ? and state = ?")) {
      UnitState state = answer.need().isPresent() ? UnitState.PLANNED : UnitState.FAILED;
      update.setInt(1, state.ordinal());
      update.setBytes(2, Packed.pack(answer.json()));
      update.setBytes(3, answer.need().map(NeedBytes::of).orElse(null));
      update.setString(4, job);
      update.setInt(5, unit);
      update.setInt(6, UnitState.WAITING.ordinal());
      return update.executeUpdate() == 1;
    }
  }

  /** How many units of a job are in each state, by its ordinal. */
  static int[] counts(Connection connection, String job) throws SQLException {
    int[] counts = new int[UnitState.values().length];
    try (PreparedStatement select =
        connection.prepareStatement(
            "select state, count(*) from unit where job = ? group by state")) {
      select.setString(1, job);
      try (ResultSet row = select.executeQuery()) {
        while (row.next()) {
          counts[row.getInt(1)] = row.getInt(2);
        }
      }
    }
    return counts;
  }

  static boolean someWait(Connection connection, String job) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "select 1 from unit where job = ? and state = ? fetch first 1 row only")) {
      select.setString(1, job);
      select.setInt(2, UnitState.WAITING.ordinal());
      try (ResultSet row = select.executeQuery()) {
        return row.next();
      }
    }
  }

  /** Units of all jobs that wait for an answer, with those being worked on. */
  static long waiting(Connection connection) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement("select count(*) from " + JobTasks.TABLE)) {
      try (ResultSet row = select.executeQuery()) {
        return row.next() ? row.getLong(1) : 0;
      }
    }
  }

  static List<JobStatus.FailedUnit> failures(Connection connection, String job, int most)
      throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "select unit, reference from unit where job = ? and state = ?"
                + " order by unit fetch first ? rows only")) {
      select.setString(1, job);
      select.setInt(2, UnitState.FAILED.ordinal());
      select.setInt(3, most);
      try (ResultSet row = select.executeQuery()) {
        List<JobStatus.FailedUnit> failures = new ArrayList<>();
        while (row.next()) {
          failures.add(new JobStatus.FailedUnit(row.getInt(1), row.getString(2)));
        }
        return failures;
      }
    }
  }

  /** Units from one on, with their answers. */
  static List<UnitRow> rows(Connection connection, String job, int from, int most)
      throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "select unit, reference, state, answer from unit where job = ? and unit >= ?"
                + " order by unit fetch first ? rows only")) {
      select.setString(1, job);
      select.setInt(2, from);
      select.setInt(3, most);
      try (ResultSet row = select.executeQuery()) {
        List<UnitRow> rows = new ArrayList<>();
        while (row.next()) {
          byte[] answer = row.getBytes(4);
          rows.add(
              new UnitRow(
                  row.getInt(1),
                  row.getString(2),
                  UnitState.values()[row.getInt(3)],
                  answer == null ? new byte[0] : answer));
        }
        return rows;
      }
    }
  }

  /** What an order must know of the units that are planned, in their order. */
  static List<PooledOrder.Ordered> needs(Connection connection, String job) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "select unit, reference, need from unit where job = ? and state = ? order by unit")) {
      select.setString(1, job);
      select.setInt(2, UnitState.PLANNED.ordinal());
      try (ResultSet row = select.executeQuery()) {
        List<PooledOrder.Ordered> needs = new ArrayList<>();
        while (row.next()) {
          needs.add(
              new PooledOrder.Ordered(
                  row.getInt(1), row.getString(2), NeedBytes.read(row.getBytes(3))));
        }
        return needs;
      }
    }
  }
}
