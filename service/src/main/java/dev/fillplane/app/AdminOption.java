package dev.fillplane.app;

import dev.fillplane.web.Version;
import dev.fillplane.web.watch.AdminServer;
import dev.fillplane.web.watch.Metrics;
import dev.fillplane.web.watch.Observer;
import java.io.IOException;
import java.net.InetSocketAddress;
import picocli.CommandLine.Option;

/** Where the numbers of the service can be read, if anywhere. */
final class AdminOption {

  @Option(
      names = "--admin-port",
      paramLabel = "PORT",
      description =
          "Tells numbers for Prometheus at /metrics on this port, without a key; none unless told.")
  private Integer port;

  @Option(
      names = "--admin-host",
      paramLabel = "ADDRESS",
      defaultValue = "127.0.0.1",
      description = "Address of that port; this machine only unless told.")
  private String host;

  /** Counts and tells, or does neither where no port is told. */
  Observer start() throws IOException {
    if (port == null) {
      return Observer.NONE;
    }
    Metrics metrics = new Metrics();
    metrics.build(Version.TEXT, Version.COMMIT.orElse("unknown"));
    AdminServer.start(new InetSocketAddress(host, port), metrics);
    return metrics;
  }
}
