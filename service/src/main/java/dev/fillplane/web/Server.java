package dev.fillplane.web;

import dev.fillplane.job.Jobs;
import dev.fillplane.openapi.Contract;
import dev.fillplane.web.watch.Observer;
import dev.fillplane.web.watch.RequestLines;
import io.github.bucket4j.TimeMeter;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiConsumer;

/** The running service. */
public final class Server implements AutoCloseable {

  private final ScheduledExecutorService watch = Watch.start();
  private final Settings settings;
  private final Lane lane;
  private final Bodies bodies;
  private final Javalin javalin;
  private final WarmUp warmUp;
  private final PlanLines lines;
  private final PlanStreams streams;
  private final Jobs jobs;
  private final AtomicBoolean ready = new AtomicBoolean();

  private Server(Settings settings, Observer observer, BiConsumer<JavalinConfig, Intake> more) {
    this.settings = settings;
    Contract contract = Contract.load();
    Calculations calculations = new Calculations();
    SchemaGate gate = new SchemaGate(contract, schemas(calculations));
    Desk desk = new Desk(gate, observer);
    PlanDesk planDesk = new PlanDesk(calculations, desk);
    warmUp = new WarmUp(contract, new PlanDesk(calculations, new Desk(gate, Observer.NONE)));
    lane = new Lane(settings.capacity(), watch);
    bodies = new Bodies(settings.largestBody(), settings.capacity(), settings.pace(), watch);
    Intake intake = new Intake(bodies, lane, new Sending(settings.pace(), watch));
    lines =
        new PlanLines(
            line -> lane.inTurn(line.length, () -> planDesk.answer(line)),
            settings.capacity().places());
    streams = new PlanStreams(lines);
    jobs = new Jobs(settings.jobs().withWatch(observer), new UnitDesk(desk, lane));
    tell(observer);
    javalin =
        Javalin.create(
            config -> {
              Listening.set(config, settings, watch, new RequestLines(observer));
              guard(config, settings, contract);
              for (Calculation<?> calculation : calculations.all()) {
                Endpoint<?> endpoint = new Endpoint<>(calculation, desk, intake);
                config.routes.post(calculation.path(), endpoint::handle);
              }
              compose(config, gate, intake);
              config.routes.post(PlanStreams.PATH, streams::handle);
              new JobRequests(jobs, gate, intake, settings.jobs().webhooks().targets())
                  .handle(config);
              new JobAnswers(jobs, intake).handle(config);
              new Catalogues(Capabilities.of(contract, settings)).handle(config);
              new Health(contract, ready::get).handle(config);
              Pages.handle(config, contract);
              more.accept(config, intake);
            });
  }

  /** Numbers that are asked for when somebody looks. */
  private void tell(Observer observer) {
    observer.gauge("fillplane.heavy.running", "Heavy work that runs", lane::running);
    observer.gauge("fillplane.heavy.waiting", "Heavy work that waits for a place", lane::waiting);
    observer.gauge("fillplane.heavy.room", "Requests more that would be taken", lane::room);
    observer.gauge("fillplane.streams.open", "Streams that are answered", streams::open);
    observer.gauge(
        "fillplane.job.units.waiting", "Units of jobs that are not answered yet", jobs::waiting);
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
  private static void compose(JavalinConfig config, SchemaGate gate, Intake intake) {
    Estimates estimates = new Estimates(gate, intake);
    config.routes.post(Validation.PATH, new Validation(gate, intake)::handle);
    config.routes.post(Comparisons.PATH, new Comparisons(gate, intake)::handle);
    config.routes.post(Estimates.PATH, estimates::handle);
    config.routes.post(Estimates.LIST_PATH, estimates::handleList);
    config.routes.post(SurveyImports.PATH, new SurveyImports(intake)::handle);
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
    return start(settings, Observer.NONE);
  }

  /** The same, with somebody who hears what it does. */
  public static Server start(Settings settings, Observer observer) {
    return start(settings, observer, (config, intake) -> {});
  }

  /** The same with more operations behind the same guards. */
  static Server start(Settings settings, BiConsumer<JavalinConfig, Intake> more) {
    return start(settings, Observer.NONE, more);
  }

  private static Server start(
      Settings settings, Observer observer, BiConsumer<JavalinConfig, Intake> more) {
    settings.access().check(settings.host());
    Server server = new Server(settings, observer, more);
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

  /** The places of heavy work. */
  Lane lane() {
    return lane;
  }

  /** The bodies on their way. */
  Bodies bodies() {
    return bodies;
  }

  /**
   * Stops: says first that it is not ready, waits until whoever asks that has heard it, takes no
   * more requests, and ends after those that are being answered, see {@link Stopping}.
   */
  @Override
  public void close() {
    ready.set(false);
    drain();
    streams.close();
    javalin.stop();
    lines.close();
    jobs.close();
    lane.close();
    watch.shutdownNow();
  }

  private void drain() {
    try {
      Thread.sleep(settings.stopping().drain().toMillis());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
