package dev.fillplane.web;

import io.javalin.http.Context;
import java.util.concurrent.Executor;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.io.EndPoint;

/** Finds what of the server is behind a request. */
final class Connections {

  private Connections() {}

  /** The threads that requests run on. */
  static Executor threads(Context context) {
    return ServletContextRequest.getServletContextRequest(context.req())
        .getComponents()
        .getExecutor();
  }

  /** Its connection. */
  static EndPoint of(Context context) {
    return ServletContextRequest.getServletContextRequest(context.req())
        .getConnectionMetaData()
        .getConnection()
        .getEndPoint();
  }
}
