package dev.fillplane.client;

import dev.fillplane.client.generated.ApiResponse;
import dev.fillplane.client.generated.api.JobsApi;
import dev.fillplane.client.generated.model.Job;
import dev.fillplane.client.generated.model.JobRequest;
import dev.fillplane.client.generated.model.JobUnit;
import java.net.http.HttpHeaders;
import java.time.Duration;
import java.time.Instant;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A job of the service: many units, planned one by one, whatever happens to the service meanwhile.
 *
 * <p>Its calls fail as those of {@link FillplaneClient#call} do. For many threads; one may wait
 * while another cancels.
 */
public final class RunningJob {
  private static final Duration USUAL_PAUSE = Duration.ofSeconds(2);
  private static final Duration LEAST_PAUSE = Duration.ofMillis(100);
  private static final int PAGE = 20;

  private final FillplaneClient client;
  private final JobsApi jobs;
  private final Time time;
  private final String id;
  private final Duration firstPause;

  private RunningJob(FillplaneClient client, Time time, String id, Duration firstPause) {
    this.client = client;
    this.jobs = client.api(JobsApi::new);
    this.time = time;
    this.id = id;
    this.firstPause = firstPause;
  }

  static RunningJob start(FillplaneClient client, Time time, JobRequest request) {
    JobsApi jobs = client.api(JobsApi::new);
    ApiResponse<Job> answer = client.call(() -> jobs.makeJobWithHttpInfo(request, null));
    return new RunningJob(client, time, answer.getData().getId(), pause(answer, time.now()));
  }

  static RunningJob of(FillplaneClient client, Time time, String id) {
    return new RunningJob(client, time, id, Duration.ZERO);
  }

  /** Its id; keep it to take the job up again later. */
  public String id() {
    return id;
  }

  /** How far it is now. */
  public Job look() {
    return client.call(() -> jobs.getJob(id));
  }

  /**
   * Waits for the end of the job: looks as often as the service's {@code Retry-After} says.
   *
   * @param patience how long to wait at most
   * @param watcher is told what is seen at each look
   * @return the job once it has ended; empty if it has not when the patience is over
   */
  public Optional<Job> await(Duration patience, Consumer<Job> watcher) {
    Instant deadline = time.now().plus(patience);
    Duration pause = firstPause;
    while (true) {
      Duration left = Duration.between(time.now(), deadline);
      if (!pause.isZero()) {
        time.waitFor(pause.compareTo(left) < 0 ? pause : notNegative(left));
      }
      ApiResponse<Job> seen = client.call(() -> jobs.getJobWithHttpInfo(id));
      watcher.accept(seen.getData());
      if (seen.getData().getEndedAt() != null) {
        return Optional.of(seen.getData());
      }
      if (!time.now().isBefore(deadline)) {
        return Optional.empty();
      }
      pause = pause(seen, time.now());
    }
  }

  /**
   * Cancels it; plans that are made stay until it expires. Nothing happens where it has ended. The
   * service is asked a single time, since the same asked of a job that has ended forgets it; one
   * that ends in that very moment is forgotten.
   */
  public void cancel() {
    if (look().getEndedAt() != null) {
      return;
    }
    try {
      client.once(() -> jobs.deleteJob(id));
    } catch (ProblemException | NoAnswerException failure) {
      if (look().getEndedAt() == null) {
        throw failure;
      }
    }
  }

  /** The units in the order of the request, a page in memory at a time. */
  public Iterator<JobUnit> units() {
    return new Pages<>(
        cursor -> {
          var page = client.call(() -> jobs.listJobPlans(id, cursor.orElse(null), PAGE));
          return new Pages.Page<>(page.getItems(), Optional.ofNullable(page.getNextCursor()));
        });
  }

  private static Duration pause(ApiResponse<Job> answer, Instant now) {
    Map<String, List<String>> told = answer.getHeaders();
    Optional<Duration> asked = RetryAfter.of(HttpHeaders.of(told, (name, value) -> true), now);
    return asked
        .map(pause -> pause.compareTo(LEAST_PAUSE) < 0 ? LEAST_PAUSE : pause)
        .orElse(USUAL_PAUSE);
  }

  private static Duration notNegative(Duration length) {
    return length.isNegative() ? Duration.ZERO : length;
  }
}
