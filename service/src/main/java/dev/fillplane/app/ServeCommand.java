package dev.fillplane.app;

import dev.fillplane.job.JobSettings;
import dev.fillplane.web.Server;
import dev.fillplane.web.Settings;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Runs the service until it is stopped. */
@Command(name = "serve", description = "Runs the service.", mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {

  private static final String DATABASE = "FILLPLANE_DATABASE_URL";

  @Option(names = "--host", defaultValue = "127.0.0.1", description = "Address to listen on.")
  private String host;

  @Option(
      names = "--port",
      defaultValue = "8080",
      description = "Port to listen on; 0 for any free one, which is then printed.")
  private int port;

  @Option(
      names = "--requests-per-minute",
      defaultValue = "0",
      description = "Requests that one address may make in a minute; 0 for no limit.")
  private int requestsPerMinute;

  @Option(
      names = "--data",
      defaultValue = Settings.DATA,
      description =
          "Folder in which jobs are kept, made with the first job; not used where"
              + " FILLPLANE_DATABASE_URL tells a PostgreSQL.")
  private Path data;

  @Override
  public Integer call() throws InterruptedException {
    JobSettings jobs = JobSettings.in(data, Optional.ofNullable(System.getenv(DATABASE)));
    Server server =
        Server.start(
            Settings.at(host, port).withRequestsPerMinute(requestsPerMinute).withJobs(jobs));
    Runtime.getRuntime().addShutdownHook(new Thread(server::close, "stop"));
    System.out.println("Listening on http://" + host + ":" + server.port());
    new CountDownLatch(1).await();
    return 0;
  }
}
