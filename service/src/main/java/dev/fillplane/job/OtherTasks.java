package dev.fillplane.job;

import com.github.kagkarlsson.scheduler.SchedulerClient;
import com.github.kagkarlsson.scheduler.task.ExecutionComplete;
import com.github.kagkarlsson.scheduler.task.ExecutionOperations;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import java.sql.Connection;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Tasks beside those of units, with a table and threads of their own, so that no unit waits for a
 * receiver that hangs: a message that a job has ended, and sweeping.
 */
final class OtherTasks {

  static final String TABLE = "other_tasks";

  private static final Logger LOG = LoggerFactory.getLogger(OtherTasks.class);
  private static final Duration SWEEP = Duration.ofMinutes(10);
  private static final Duration STORE_AGAIN = Duration.ofSeconds(5);
  private static final String NO_ATTEMPT = "0";

  private final OneTimeTask<String> messages;
  private final RecurringTask<Void> sweep;

  OtherTasks(EndMessages endMessages, Runnable sweeping, JobWatch watch) {
    messages =
        Tasks.oneTime("message", String.class)
            .onFailure((done, operations) -> again(done, operations, watch))
            .onDeadExecutionRevive()
            .execute((task, context) -> send(endMessages, task.getId(), watch));
    sweep =
        Tasks.recurring("sweep", FixedDelay.of(SWEEP)).execute((task, context) -> sweeping.run());
  }

  OneTimeTask<String> messages() {
    return messages;
  }

  RecurringTask<Void> sweep() {
    return sweep;
  }

  /** Schedules the message of a job, with the transaction of a connection. */
  void schedule(Connection connection, String job) {
    SchedulerClient.Builder.create(new OneConnection(connection), messages)
        .tableName(TABLE)
        .serializer(new PlainText())
        .build()
        .scheduleIfNotExists(messages.instance(job, NO_ATTEMPT), Instant.EPOCH);
  }

  /** A message was not delivered. */
  private static final class NotDelivered extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient Delivery delivery;

    NotDelivered(Delivery delivery) {
      super(delivery.why(), null, false, false);
      this.delivery = delivery;
    }
  }

  private static void send(EndMessages messages, String job, JobWatch watch) {
    Optional<Delivery> delivery = messages.send(job);
    if (delivery.isEmpty()) {
      return;
    }
    watch.messageSent(delivery.get().outcome());
    LOG.atInfo().addKeyValue("job", job).log("message of a job: {}", delivery.get().why());
    if (delivery.get().outcome() == Delivery.Outcome.FAILED) {
      throw new NotDelivered(delivery.get());
    }
  }

  /** Its data counts the attempts; that the store was away is none. */
  private static void again(
      ExecutionComplete done, ExecutionOperations<String> operations, JobWatch watch) {
    if (!(done.getCause().orElse(null) instanceof NotDelivered failed)) {
      operations.reschedule(done, done.getTimeDone().plus(STORE_AGAIN));
      return;
    }
    int attempts = 1 + attempts(done.getExecution().taskInstance.getData());
    double chance = ThreadLocalRandom.current().nextDouble();
    Optional<Instant> next =
        WebhookRetries.next(attempts, done.getTimeDone(), chance, failed.delivery.retryAfter());
    next.ifPresentOrElse(
        time -> operations.reschedule(done, time, Integer.toString(attempts)),
        () -> {
          watch.messageGivenUp();
          LOG.atWarn()
              .addKeyValue("job", done.getExecution().getId())
              .log("message of a job given up");
          operations.remove();
        });
  }

  /** Messages of an earlier version have no count. */
  private static int attempts(Object data) {
    return data instanceof String text ? Integer.parseInt(text) : 0;
  }
}
