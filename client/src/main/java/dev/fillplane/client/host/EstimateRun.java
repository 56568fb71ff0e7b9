package dev.fillplane.client.host;

import dev.fillplane.client.FillplaneClient;
import dev.fillplane.client.generated.api.EstimatesApi;
import dev.fillplane.client.generated.model.LineItemsRequest;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Asks for the line items of one unit after the other, a few at a time. */
final class EstimateRun {
  /** Calls under way; the service works on as many at once as it has processors. */
  private static final int AT_ONCE = 2;

  /** Units taken from the source and not handed over; a slow one is not waited for idly. */
  private static final int AHEAD = 2 * AT_ONCE;

  private record Pending(Unit unit, Future<Estimate> answer) {}

  private final FillplaneClient client;
  private final EstimatesApi estimates;
  private final Optional<PriceList> prices;
  private final Iterator<Unit> units;
  private final Handover handover;
  private final Deque<Pending> pending = new ArrayDeque<>();
  private final ExecutorService workers = Executors.newFixedThreadPool(AT_ONCE, DaemonThread::new);

  EstimateRun(FillplaneClient client, Host host) {
    this.client = client;
    this.estimates = client.api(EstimatesApi::new);
    this.prices = host.prices();
    UnitSource source = host.source();
    this.units = source.units();
    this.handover = new Handover(host, source);
  }

  RunSummary run() {
    try {
      ask();
      while (!pending.isEmpty()) {
        handOver(pending.remove());
        ask();
      }
    } finally {
      workers.shutdownNow();
    }
    return handover.summary();
  }

  private void ask() {
    while (pending.size() < AHEAD && !handover.ended() && !handover.cancelled()) {
      try {
        if (!units.hasNext()) {
          return;
        }
        Unit unit = units.next();
        pending.add(new Pending(unit, workers.submit(() -> estimate(unit))));
      } catch (RuntimeException e) {
        handover.end(e);
      }
    }
  }

  private Estimate estimate(Unit unit) {
    LineItemsRequest request = Estimates.request(unit, prices);
    return Estimates.read(client.call(() -> estimates.listLineItems(request)));
  }

  private void handOver(Pending next) {
    Optional<Estimate> estimate = Optional.empty();
    try {
      estimate = Optional.of(next.answer().get());
    } catch (ExecutionException e) {
      handover.fail(next.unit(), reason(e.getCause()));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      handover.fail(next.unit(), new HostException("The run was interrupted.", e));
    }
    estimate.ifPresent(lines -> handover.add(next.unit(), lines));
  }

  private static RuntimeException reason(Throwable cause) {
    return cause instanceof RuntimeException failure
        ? failure
        : new HostException("A unit failed: " + cause, cause);
  }
}
