package dev.fillplane.job;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Map;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** An open store: a pool of connections to tables of the newest shape. Safe to share. */
final class Database implements AutoCloseable {

  private static final long CONNECT_MILLIS = 5_000;

  /** What H2 says of a file that another process has open. */
  private static final int FILE_IN_USE = 90020;

  private final StoreAddress address;
  private final HikariDataSource pool;

  private Database(StoreAddress address, HikariDataSource pool) {
    this.address = address;
    this.pool = pool;
  }

  /** Some statements. */
  interface Work<T> {
    T run(Connection connection) throws SQLException;
  }

  /**
   * Opens the store, and makes it where there is none.
   *
   * @param connections that may be open at once
   * @throws StoreException if it cannot be reached
   */
  static Database open(StoreAddress address, int connections) {
    HikariConfig config = new HikariConfig();
    config.setJdbcUrl(address.url());
    config.setUsername(address.user());
    config.setPassword(address.password());
    config.setMaximumPoolSize(connections);
    config.setMinimumIdle(1);
    config.setConnectionTimeout(CONNECT_MILLIS);
    config.setInitializationFailTimeout(1);
    config.setPoolName("jobs");
    if (!address.shared()) {
      config.setExceptionOverride(new BrokenFile());
    }
    HikariDataSource pool = null;
    try {
      pool = new HikariDataSource(config);
      migrate(pool, address);
      return new Database(address, pool);
    } catch (RuntimeException e) {
      if (pool != null) {
        pool.close();
      }
      throw unreachable(address, e);
    }
  }

  private static void migrate(DataSource source, StoreAddress address) {
    Flyway.configure()
        .dataSource(source)
        .locations("classpath:dev/fillplane/job/migrations")
        .placeholders(Map.of("bytes", address.bytes()))
        .table("fillplane_migrations")
        .load()
        .migrate();
  }

  private static StoreException unreachable(StoreAddress address, RuntimeException cause) {
    for (Throwable e = cause; e != null; e = e.getCause()) {
      if (e instanceof SQLException sql && sql.getErrorCode() == FILE_IN_USE) {
        return new StoreException(
            "The file of jobs is open in another process, which works on them. Start this one with"
                + " another --data folder, or both with FILLPLANE_DATABASE_URL.",
            cause);
      }
    }
    String what = cause instanceof FlywayException ? "cannot be made ready" : "cannot be opened";
    return new StoreException("The store of jobs " + what + ".", cause);
  }

  /** For the scheduler. */
  DataSource source() {
    return pool;
  }

  StoreAddress address() {
    return address;
  }

  /** Runs statements of which each stands alone. */
  <T> T run(Work<T> work) {
    try (Connection connection = pool.getConnection()) {
      return work.run(connection);
    } catch (SQLException e) {
      throw failed(e);
    }
  }

  /** Runs statements of which all happen or none. */
  <T> T change(Work<T> work) {
    try (Connection connection = pool.getConnection()) {
      connection.setAutoCommit(false);
      try {
        T result = work.run(connection);
        connection.commit();
        return result;
      } catch (SQLException | RuntimeException | Error e) {
        rollBack(connection, e);
        throw e;
      } finally {
        connection.setAutoCommit(true);
      }
    } catch (SQLException e) {
      throw failed(e);
    } catch (RuntimeException e) {
      // The scheduler wraps what the database says.
      if (e.getCause() instanceof SQLException sql) {
        throw failed(sql);
      }
      throw e;
    }
  }

  private static void rollBack(Connection connection, Throwable cause) {
    try {
      connection.rollback();
    } catch (SQLException e) {
      cause.addSuppressed(e);
    }
  }

  private StoreException failed(SQLException e) {
    return new StoreException("The store of jobs does not answer; try again in a moment.", e);
  }

  @Override
  public void close() {
    pool.close();
  }
}
