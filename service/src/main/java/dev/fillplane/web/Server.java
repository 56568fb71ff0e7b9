package dev.fillplane.web;

import dev.fillplane.job.Jobs;
import dev.fillplane.openapi.Contract;
import io.github.bucket4j.TimeMeter;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.GracefulHandler;

/** The running service. */
public final class Server implements AutoCloseable {

  private static final long IDLE_MILLIS = 10_000;
  private static final long STOP_MILLIS = 5_000;

  private final Javalin javalin;
  private final WarmUp warmUp;
  private final PlanLines lines;
  private final PlanStreams streams;
  private final Jobs jobs;
  private final AtomicBoolean ready = new AtomicBoolean();

  private Server(Settings settings) {
    Contract contract = Contract.load();
    Calculations calculations = new Calculations();
    Slots slots = new Slots(settings.places(), settings.patienceSeconds());
    SchemaGate gate = new SchemaGate(contract, schemas(calculations));
    Desk desk = new Desk(gate);
    PlanDesk planDesk = new PlanDesk(calculations, desk);
    warmUp = new WarmUp(contract, planDesk);
    lines = new PlanLines(planDesk::answer, slots, settings.places());
    streams = new PlanStreams(lines);
    jobs = new Jobs(settings.jobs(), new UnitDesk(desk));
    javalin =
        Javalin.create(
            config -> {
              listen(config, settings);
              guard(config, settings, contract);
              for (Calculation<?> calculation : calculations.all()) {
                Endpoint<?> endpoint = new Endpoint<>(calculation, desk, slots);
                config.routes.post(calculation.path(), endpoint::handle);
              }
              compose(config, gate, slots);
              config.routes.post(PlanStreams.PATH, streams::handle);
              new JobRequests(jobs, gate, slots, settings.jobs().webhooks().targets())
                  .handle(config);
              new JobAnswers(jobs, slots).handle(config);
              new Catalogues(Capabilities.of(contract, settings)).handle(config);
              new Health(contract, ready::get).handle(config);
              Pages.handle(config, contract);
            });
  }

  /** What happens to every request, whatever it asks. */
  private static void guard(JavalinConfig config, Settings settings, Contract contract) {
    RateLimit limit = new RateLimit(settings.requestsPerMinute(), TimeMeter.SYSTEM_NANOTIME);
    Problems.handle(config);
    RequestIds.handle(config);
    Packing.handle(config);
    new Admission(settings.access(), limit).handle(config);
    new Deprecations(contract.document()).handle(config);
  }

  /** Operations that are more than one body and one calculation. */
  private static void compose(JavalinConfig config, SchemaGate gate, Slots slots) {
    Estimates estimates = new Estimates(gate, slots);
    config.routes.post(Validation.PATH, new Validation(gate, slots)::handle);
    config.routes.post(Comparisons.PATH, new Comparisons(gate, slots)::handle);
    config.routes.post(Estimates.PATH, estimates::handle);
    config.routes.post(Estimates.LIST_PATH, estimates::handleList);
    config.routes.post(SurveyImports.PATH, new SurveyImports(slots)::handle);
  }

  private static List<String> schemas(Calculations calculations) {
    List<String> schemas = new ArrayList<>(calculations.schemas());
    schemas.add(Comparisons.SCHEMA);
    schemas.add(Estimates.SCHEMA);
    schemas.add(JobBody.SCHEMA);
    return schemas;
  }

  /**
   * Starts to listen; ready once it has planned an example a few times.
   *
   * @throws IllegalArgumentException if it could be reached from elsewhere without keys, and nobody
   *     said that this is meant
   * @throws RuntimeException if the port is taken
   */
  public static Server start(Settings settings) {
    settings.access().check(settings.host());
    Server server = new Server(settings);
    server.javalin.start();
    server.warmUp.run();
    server.ready.set(true);
    server.jobs.resume();
    return server;
  }

  /** Gets ready for the first sheet as well, beside the work. */
  public void prepareSheets() {
    warmUp.sheet();
  }

  /** The port that is listened on. */
  public int port() {
    return javalin.port();
  }

  /** Stops after the requests that are being answered. */
  @Override
  public void close() {
    ready.set(false);
    streams.close();
    javalin.stop();
    lines.close();
    jobs.close();
  }

  private static void listen(JavalinConfig config, Settings settings) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.http.maxRequestSize = settings.bodyBytes();
    config.http.prefer405over404 = true;
    config.http.generateEtags = false;
    config.jetty.modifyServer(
        jetty -> {
          jetty.setStopTimeout(STOP_MILLIS);
          jetty.insertHandler(new GracefulHandler());
          jetty.setErrorHandler(new JettyProblems());
        });
    config.jetty.addConnector(
        (jetty, unused) -> {
          HttpConfiguration http = new HttpConfiguration();
          http.setSendServerVersion(false);
          http.setIdleTimeout(IDLE_MILLIS);
          ServerConnector connector = new ServerConnector(jetty, new HttpConnectionFactory(http));
          connector.setHost(settings.host());
          connector.setPort(settings.port());
          connector.setIdleTimeout(IDLE_MILLIS);
          return connector;
        });
  }
}
