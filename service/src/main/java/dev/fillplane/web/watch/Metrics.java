package dev.fillplane.web.watch;

import dev.fillplane.job.Delivery;
import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.DistributionSummary;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.Timer;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Duration;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleSupplier;
import java.util.stream.LongStream;

/**
 * Counts what the service does, in the text format of Prometheus. Labels are words of fixed sets
 * (paths of the contract, classes of status, kinds of problem), so that no caller makes series
 * grow.
 */
public final class Metrics implements Observer {

  private static final Duration[] SECONDS =
      LongStream.of(1, 2, 5, 10, 20, 50, 100, 200, 500, 1_000, 2_000, 5_000, 10_000, 30_000)
          .mapToObj(Duration::ofMillis)
          .toArray(Duration[]::new);
  private static final double[] READINGS = {10, 30, 100, 300, 1e3, 3e3, 1e4, 3e4, 1e5, 3e5, 1e6};
  private static final double[] CELLS = {1e3, 2e3, 5e3, 1e4, 2e4, 5e4, 1e5, 2e5};

  private final PrometheusMeterRegistry registry =
      new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
  private final AtomicInteger units = new AtomicInteger();
  private final Counter lines = registry.counter("fillplane.stream.lines");
  private final DistributionSummary readings = summary("fillplane.plan.readings", READINGS);
  private final DistributionSummary cells = summary("fillplane.plan.cells", CELLS);

  /** Also counts what the virtual machine and the process do. */
  public Metrics() {
    Machine.bind(registry);
    gauge("fillplane.job.units.running", "Units of jobs this node works on", units::get);
    for (Delivery.Outcome outcome : Delivery.Outcome.values()) {
      webhooks(word(outcome));
    }
    webhooks("given-up");
    units("planned");
    units("failed");
  }

  private DistributionSummary summary(String name, double[] buckets) {
    return DistributionSummary.builder(name).serviceLevelObjectives(buckets).register(registry);
  }

  @Override
  public void answered(String method, String route, int status, long nanos, Note note) {
    Timer.builder("fillplane.http.request")
        .description("From the first byte of a request to the end of its answer")
        .tags("method", method, "route", route, "status", status / 100 + "xx")
        .serviceLevelObjectives(SECONDS)
        .register(registry)
        .record(nanos, TimeUnit.NANOSECONDS);
    note.problem()
        .ifPresent(kind -> registry.counter("fillplane.problems", "kind", kind).increment());
    lines.increment(note.lines());
  }

  @Override
  public void computed(WorkSize size) {
    if (size.readings() > 0) {
      readings.record((double) size.readings());
    }
    if (size.cells() > 0) {
      cells.record((double) size.cells());
    }
  }

  @Override
  public void gauge(String name, String what, DoubleSupplier number) {
    Gauge.builder(name, number::getAsDouble).description(what).register(registry);
  }

  @Override
  public void unitBegun() {
    units.incrementAndGet();
  }

  @Override
  public void unitEnded() {
    units.decrementAndGet();
  }

  @Override
  public void unitAnswered(boolean planned) {
    units(planned ? "planned" : "failed").increment();
  }

  private Counter units(String outcome) {
    return registry.counter("fillplane.job.units", "outcome", outcome);
  }

  @Override
  public void messageSent(Delivery.Outcome outcome) {
    webhooks(word(outcome)).increment();
  }

  @Override
  public void messageGivenUp() {
    webhooks("given-up").increment();
  }

  private Counter webhooks(String outcome) {
    return registry.counter("fillplane.webhooks", "outcome", outcome);
  }

  private static String word(Enum<?> outcome) {
    return outcome.name().toLowerCase(Locale.ROOT);
  }

  /** Names what runs. */
  public void build(String version, String commit) {
    Gauge.builder("fillplane.build.info", () -> 1)
        .description("What runs; always 1")
        .tags("version", version, "commit", commit)
        .register(registry);
  }

  /** All numbers, as Prometheus reads them. */
  public String text() {
    return registry.scrape();
  }
}
