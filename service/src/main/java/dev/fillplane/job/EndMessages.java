package dev.fillplane.job;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.time.Clock;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Sends the message that a job has ended. Safe to share. */
final class EndMessages implements AutoCloseable {

  private static final String TYPE = "job.ended";

  private final Database database;
  private final WebhookSettings settings;
  private final Clock clock;
  private Optional<WebhookSender> sender = Optional.empty();

  EndMessages(Database database, WebhookSettings settings, Clock clock) {
    this.database = database;
    this.settings = settings;
    this.clock = clock;
  }

  /** Tries to tell of a job once; empty where it is forgotten or has nobody to tell. */
  Optional<Delivery> send(String id) {
    Optional<JobRow> job = database.run(connection -> JobTable.find(connection, id));
    if (job.isEmpty() || job.get().terms().webhook().isEmpty()) {
      return Optional.empty();
    }
    int[] counts = database.run(connection -> UnitTable.counts(connection, id));
    JobState state =
        job.get().state(counts[UnitState.PLANNED.ordinal()], counts[UnitState.FAILED.ordinal()]);
    URI url = URI.create(job.get().terms().webhook().get().url());
    return Optional.of(
        sender().send(url, message(job.get(), state), secrets(job.get()), Instant.now(clock)));
  }

  private static WebhookMessage message(JobRow job, JobState state) {
    Map<String, String> data = new LinkedHashMap<>();
    data.put("job", job.id());
    data.put("state", state.name().toLowerCase(Locale.ROOT));
    data.put("path", "/v1/jobs/" + job.id());
    return new WebhookMessage(
        "msg_" + job.id(), TYPE, job.endedAt().orElse(job.createdAt()), data, job.owner().trace());
  }

  private List<WebhookSecret> secrets(JobRow job) {
    try {
      return WebhookSecrets.open(settings.master()).of(job.owner().caller());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private synchronized WebhookSender sender() {
    if (sender.isEmpty()) {
      sender = Optional.of(WebhookSender.start(settings.targets()));
    }
    return sender.get();
  }

  @Override
  public synchronized void close() {
    sender.ifPresent(WebhookSender::close);
  }
}
