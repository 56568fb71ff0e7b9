package dev.fillplane.client.host;

import dev.fillplane.client.ProblemException;
import dev.fillplane.client.generated.model.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Hands over to the host what comes of its units, and counts. For the thread of the run. */
final class Handover {
  /** Statuses that are about the request of one unit, not about the caller or the service. */
  private static final Set<Integer> OF_THE_UNIT = Set.of(400, 413, 422, 500);

  private final EstimateSink sink;
  private final ProgressView progress;
  private final OptionalInt of;
  private final List<String> unanswered = new ArrayList<>();
  private int done;
  private int refused;
  private Optional<RuntimeException> endedBy = Optional.empty();

  Handover(Host host, UnitSource source) {
    this.sink = host.sink();
    this.progress = host.progress();
    this.of = source.count();
  }

  void add(Unit unit, Estimate estimate) {
    sink.add(unit, estimate);
    done++;
    show();
  }

  void add(Unit unit, Plan plan) {
    sink.add(unit, plan);
    done++;
    show();
  }

  void refuse(Unit unit, Trouble trouble) {
    sink.refuse(unit, trouble);
    refused++;
    show();
  }

  /** A call for one unit failed: that is its own trouble, or ends the run. */
  void fail(Unit unit, RuntimeException failure) {
    if (failure instanceof ProblemException problem && OF_THE_UNIT.contains(problem.status())) {
      refuse(unit, Trouble.of(problem));
    } else {
      unanswered(unit);
      end(failure);
    }
  }

  void unanswered(Unit unit) {
    unanswered.add(unit.reference());
  }

  /** Ends the run; the first reason is told. */
  void end(RuntimeException reason) {
    endedBy = endedBy.or(() -> Optional.of(reason));
  }

  boolean ended() {
    return endedBy.isPresent();
  }

  boolean cancelled() {
    return progress.cancelled();
  }

  RunSummary summary() {
    return new RunSummary(done, refused, unanswered, endedBy, cancelled());
  }

  /** Shows how many units are planned, where they are handed over only later. */
  void show(int planned) {
    progress.show(planned, of);
  }

  private void show() {
    show(done + refused);
  }
}
