package dev.fillplane.client.host;

import dev.fillplane.client.FillplaneClient;
import dev.fillplane.client.PlanLine;
import dev.fillplane.client.PlanStream;
import dev.fillplane.client.generated.model.PlanRequest;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;

/** Has all units planned by one stream. */
final class StreamRun {
  private final FillplaneClient client;
  private final Iterator<Unit> units;
  private final Handover handover;
  private final Queue<Unit> asked = new ConcurrentLinkedQueue<>();
  private volatile boolean stopped;

  StreamRun(FillplaneClient client, Host host) {
    this.client = client;
    UnitSource source = host.source();
    this.units = source.units();
    this.handover = new Handover(host, source);
  }

  RunSummary run() {
    try (PlanStream stream = client.streamPlans(requests())) {
      while (answered(stream)) {
        handOver(asked.remove(), stream.next());
      }
    }
    stop().forEach(handover::unanswered);
    return handover.summary();
  }

  /** Takes no more units, and gives those that were asked for in vain. */
  private synchronized Queue<Unit> stop() {
    stopped = true;
    return asked;
  }

  private boolean more() {
    return !stopped && !handover.cancelled() && units.hasNext();
  }

  /** A unit counts as asked for before anything can go wrong with it. */
  private synchronized Unit take() {
    if (stopped) {
      throw new NoSuchElementException();
    }
    Unit unit = units.next();
    asked.add(unit);
    return unit;
  }

  private boolean answered(PlanStream stream) {
    try {
      return stream.hasNext();
    } catch (RuntimeException e) {
      handover.end(e);
      return false;
    }
  }

  private void handOver(Unit unit, PlanLine line) {
    line.answer().ifPresent(plan -> handover.add(unit, plan));
    line.problem().ifPresent(problem -> handover.refuse(unit, Trouble.of(problem)));
  }

  /** The requests of the units. */
  private Iterator<PlanRequest> requests() {
    return new Iterator<>() {
      @Override
      public boolean hasNext() {
        return more();
      }

      @Override
      public PlanRequest next() {
        return Requests.of(take());
      }
    };
  }
}
