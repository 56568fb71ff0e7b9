package dev.fillplane.app;

import dev.fillplane.job.JobSettings;
import dev.fillplane.job.WebhookSettings;
import dev.fillplane.job.WebhookTargets;
import dev.fillplane.web.Access;
import dev.fillplane.web.Server;
import dev.fillplane.web.Settings;
import dev.fillplane.web.key.KeyBook;
import dev.fillplane.web.watch.Observer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Runs the service until it is stopped. */
@Command(name = "serve", description = "Runs the service.", mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {

  private static final String DATABASE = "FILLPLANE_DATABASE_URL";
  private static final Logger LOG = LoggerFactory.getLogger("fillplane.keys");

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
      description = "Requests that one key (without keys: one address) may make; 0 for no limit.")
  private int requestsPerMinute;

  @Option(
      names = "--data",
      defaultValue = Settings.DATA,
      description =
          "Folder in which jobs are kept, made with the first job; not used where"
              + " FILLPLANE_DATABASE_URL tells a PostgreSQL.")
  private Path data;

  @Mixin private LoadOptions load;

  @Mixin private WebhookOption webhooks;

  @Option(
      names = "--private-webhooks",
      description = "Sends webhooks into private networks and to this machine, and by http, too.")
  private boolean privateWebhooks;

  @Option(
      names = "--keys",
      paramLabel = "FILE",
      description = "Asks callers for a key of this file; it is read again when it is edited.")
  private Path keys;

  @Option(
      names = "--without-keys",
      description = "Lets anybody who reaches the address call, also from elsewhere.")
  private boolean withoutKeys;

  @Option(
      names = "--origin",
      paramLabel = "URL",
      description =
          "Without keys: pages of this origin may use the light operations. More than once for"
              + " more. With keys, those of scope browser name their origins.")
  private List<String> origins = List.of();

  @Option(
      names = "--log",
      paramLabel = "FORMAT",
      defaultValue = "json",
      description =
          "Lines of the log on the standard error stream: json or text; json unless told.")
  private LogFormat log;

  @Mixin private AdminOption admin;

  @Override
  public Integer call() throws InterruptedException {
    Logs.write(log);
    Settings settings = Settings.at(host, port).withRequestsPerMinute(requestsPerMinute);
    try {
      settings = load.in(settings).withJobs(jobs()).withAccess(access());
      settings.access().check(host);
    } catch (IllegalArgumentException | IOException e) {
      System.err.println(e.getMessage());
      return 2;
    }
    Observer observer;
    try {
      observer = admin.start();
    } catch (IOException e) {
      System.err.println("The numbers cannot be told: " + e.getMessage());
      return 2;
    }
    Server server = Server.start(settings, observer);
    Runtime.getRuntime().addShutdownHook(new Thread(server::close, "stop"));
    System.out.println("Listening on http://" + host + ":" + server.port());
    server.prepareSheets();
    new CountDownLatch(1).await();
    return 0;
  }

  private JobSettings jobs() {
    WebhookTargets targets = new WebhookTargets(privateWebhooks, privateWebhooks);
    return JobSettings.in(data, Optional.ofNullable(System.getenv(DATABASE)))
        .withWebhooks(new WebhookSettings(targets, webhooks.file()));
  }

  private Access access() throws IOException {
    if (keys == null) {
      Access access = withoutKeys ? Access.withoutKeys() : Access.local();
      return access.withOrigins(origins);
    }
    if (withoutKeys || !origins.isEmpty()) {
      throw new IllegalArgumentException("--without-keys and --origin do not go with --keys.");
    }
    return Access.withKeys(book());
  }

  private KeyBook book() throws IOException {
    if (!Files.exists(keys)) {
      throw new IOException("There is no file of keys " + keys + "; the command key makes one.");
    }
    KeyBook book = KeyBook.open(keys, LOG::warn);
    if (book.isEmpty()) {
      System.err.println("No key lets anybody in yet; the command key makes one.");
    }
    return book;
  }
}
