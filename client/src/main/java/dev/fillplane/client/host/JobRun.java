package dev.fillplane.client.host;

import dev.fillplane.client.FillplaneClient;
import dev.fillplane.client.RunningJob;
import dev.fillplane.client.generated.model.Job;
import dev.fillplane.client.generated.model.JobRequest;
import dev.fillplane.client.generated.model.JobUnit;
import dev.fillplane.client.generated.model.PlanRequest;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/** Has all units planned by one job of the service, which outlives the service's own troubles. */
final class JobRun {
  private final FillplaneClient client;
  private final UnitSource source;
  private final Handover handover;
  private final List<Unit> units = new ArrayList<>();
  private int next;

  JobRun(FillplaneClient client, Host host) {
    this.client = client;
    this.source = host.source();
    this.handover = new Handover(host, source);
  }

  RunSummary run(Duration patience) {
    Optional<RunningJob> job = started();
    job.ifPresent(running -> await(running, patience));
    job.ifPresent(this::handOver);
    units.subList(next, units.size()).forEach(handover::unanswered);
    return handover.summary();
  }

  private Optional<RunningJob> started() {
    try {
      Iterator<Unit> taken = source.units();
      while (!handover.cancelled() && taken.hasNext()) {
        units.add(taken.next());
      }
      if (units.isEmpty() || handover.cancelled()) {
        return Optional.empty();
      }
      List<PlanRequest> plans = units.stream().map(Requests::of).toList();
      return Optional.of(client.startJob(new JobRequest().plans(plans)));
    } catch (RuntimeException e) {
      handover.end(e);
      return Optional.empty();
    }
  }

  private void await(RunningJob job, Duration patience) {
    try {
      boolean[] cancelled = {false};
      Optional<Job> ended = job.await(patience, seen -> look(job, seen, cancelled));
      if (ended.isEmpty()) {
        job.cancel();
        handover.end(new HostException("The job " + job.id() + " had not ended in " + patience));
      }
    } catch (RuntimeException e) {
      lost(job, e);
    }
  }

  /** The job may well go on: whoever knows its id can take it up again. */
  private void lost(RunningJob job, RuntimeException reason) {
    String text = "The job " + job.id() + " was lost sight of: " + reason.getMessage();
    handover.end(new HostException(text, reason));
  }

  private void look(RunningJob job, Job seen, boolean[] cancelled) {
    handover.show(seen.getDone());
    if (handover.cancelled() && !cancelled[0]) {
      cancelled[0] = true;
      job.cancel();
    }
  }

  private void handOver(RunningJob job) {
    Iterator<JobUnit> answers = job.units();
    while (next < units.size()) {
      Optional<JobUnit> answer = answer(job, answers);
      if (answer.isEmpty()) {
        return;
      }
      Unit unit = units.get(next++);
      if (answer.get().getPlan() != null) {
        handover.add(unit, answer.get().getPlan());
      } else if (answer.get().getProblem() != null) {
        handover.refuse(unit, Trouble.of(answer.get().getProblem()));
      } else {
        handover.unanswered(unit);
      }
    }
  }

  private Optional<JobUnit> answer(RunningJob job, Iterator<JobUnit> answers) {
    try {
      return answers.hasNext() ? Optional.of(answers.next()) : Optional.empty();
    } catch (RuntimeException e) {
      lost(job, e);
      return Optional.empty();
    }
  }
}
