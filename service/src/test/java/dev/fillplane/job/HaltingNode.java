package dev.fillplane.job;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;

/** A process that takes a job and is gone in the same moment, as if killed. */
final class HaltingNode {

  /** Some class of each place that classes are loaded from. */
  private static final List<Class<?>> NEEDED =
      List.of(
          Jobs.class,
          HaltingNode.class,
          org.h2.Driver.class,
          com.zaxxer.hikari.HikariDataSource.class,
          org.flywaydb.core.Flyway.class,
          com.github.kagkarlsson.scheduler.Scheduler.class,
          org.slf4j.Logger.class,
          ch.qos.logback.classic.Logger.class,
          ch.qos.logback.core.Context.class,
          com.fasterxml.jackson.databind.ObjectMapper.class,
          com.fasterxml.jackson.core.JsonParser.class,
          com.fasterxml.jackson.annotation.JsonProperty.class,
          org.eclipse.jetty.client.HttpClient.class,
          org.eclipse.jetty.util.Callback.class,
          org.eclipse.jetty.http.HttpField.class,
          org.eclipse.jetty.io.Connection.class);

  private HaltingNode() {}

  /** Takes a job of five units in the folder that is told, prints its id, and halts. */
  public static void main(String[] arguments) {
    JobSettings settings =
        new JobSettings(
            StoreAddress.folder(Path.of(arguments[0])),
            1,
            JobSettings.KEPT,
            Duration.ofSeconds(1),
            Clock.systemUTC(),
            WebhookSettings.usual(),
            JobWatch.NONE);
    Jobs jobs = new Jobs(settings, CountingPlanner.held());
    String id = JobNodes.accept(jobs, JobNodes.units(5));
    System.out.print(id);
    System.out.flush();
    Runtime.getRuntime().halt(137);
  }

  /** Runs it; the id of the job that it took. */
  static String run(Path folder) throws IOException, InterruptedException {
    String classes =
        NEEDED.stream()
            .map(type -> type.getProtectionDomain().getCodeSource().getLocation().getPath())
            .distinct()
            .collect(Collectors.joining(File.pathSeparator));
    String java =
        System.getProperty("java.home") + File.separator + "bin" + File.separator + "java";
    Process process =
        new ProcessBuilder(java, "-cp", classes, HaltingNode.class.getName(), folder.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String id = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    return id;
  }
}
