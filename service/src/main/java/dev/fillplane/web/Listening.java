package dev.fillplane.web;

import dev.fillplane.web.watch.RequestLines;
import io.javalin.config.JavalinConfig;
import java.util.concurrent.ScheduledExecutorService;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** Where the service listens, and what a connection may cost. */
final class Listening {

  /** Connections at once; more wait to be accepted. Idle ones are closed. */
  static final int CONNECTIONS = 4_000;

  /**
   * Threads of requests. Heavy work, bodies on their way and callers who read slowly hold none; so
   * these are for light work, for streams and for the store of jobs.
   */
  static final int THREADS = 200;

  /** How long a connection may be quiet. */
  static final long IDLE_MILLIS = 10_000;

  private static final int LEAST_THREADS = 8;
  private static final int THREAD_IDLE_MILLIS = 60_000;

  private Listening() {}

  static void set(
      JavalinConfig config, Settings settings, ScheduledExecutorService watch, RequestLines lines) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.http.maxRequestSize = settings.largestBody();
    config.http.prefer405over404 = true;
    config.http.generateEtags = false;
    config.jetty.threadPool = new QueuedThreadPool(THREADS, LEAST_THREADS, THREAD_IDLE_MILLIS);
    config.jetty.modifyServer(
        jetty -> {
          jetty.setStopTimeout(settings.stopping().end().toMillis());
          jetty.insertHandler(new GracefulHandler());
          jetty.setErrorHandler(new JettyProblems());
          jetty.setRequestLog(lines);
          jetty.addBean(new NetworkConnectionLimit(CONNECTIONS, jetty));
        });
    config.jetty.addConnector((jetty, unused) -> connector(jetty, settings, watch));
  }

  private static ServerConnector connector(
      Server jetty, Settings settings, ScheduledExecutorService watch) {
    HttpConfiguration http = new HttpConfiguration();
    http.setSendServerVersion(false);
    http.setIdleTimeout(IDLE_MILLIS);
    http.addCustomizer(new NoUpgrades());
    ServerConnector connector = new ServerConnector(jetty, new HttpConnectionFactory(http));
    connector.setHost(settings.host());
    connector.setPort(settings.port());
    connector.setIdleTimeout(IDLE_MILLIS);
    SlowHeads slowHeads = new SlowHeads(settings.pace().head());
    connector.addBean(slowHeads);
    slowHeads.watch(watch);
    return connector;
  }
}
