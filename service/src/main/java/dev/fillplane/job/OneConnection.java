package dev.fillplane.job;

import java.io.PrintWriter;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.SQLFeatureNotSupportedException;
import java.util.logging.Logger;
import javax.sql.DataSource;

/**
 * Hands out the connection of a running transaction, which only its owner closes: what the
 * scheduler writes through it happens with the transaction or not at all.
 */
final class OneConnection implements DataSource {

  private final Connection connection;

  OneConnection(Connection connection) {
    this.connection =
        (Connection)
            Proxy.newProxyInstance(
                Connection.class.getClassLoader(),
                new Class<?>[] {Connection.class},
                (proxy, method, arguments) -> {
                  if (method.getName().equals("close")) {
                    return null;
                  }
                  try {
                    return method.invoke(connection, arguments);
                  } catch (InvocationTargetException e) {
                    throw e.getCause();
                  }
                });
  }

  @Override
  public Connection getConnection() {
    return connection;
  }

  @Override
  public Connection getConnection(String user, String password) {
    return connection;
  }

  @Override
  public PrintWriter getLogWriter() {
    return null;
  }

  @Override
  public void setLogWriter(PrintWriter out) {
    // nothing is logged here
  }

  @Override
  public void setLoginTimeout(int seconds) {
    // nobody logs in
  }

  @Override
  public int getLoginTimeout() {
    return 0;
  }

  @Override
  public Logger getParentLogger() throws SQLFeatureNotSupportedException {
    throw new SQLFeatureNotSupportedException();
  }

  @Override
  public <T> T unwrap(Class<T> type) throws SQLException {
    throw new SQLException("wraps nothing");
  }

  @Override
  public boolean isWrapperFor(Class<?> type) {
    return false;
  }
}
