package dev.fillplane.job;

import com.github.kagkarlsson.scheduler.SchedulerClient;
import com.github.kagkarlsson.scheduler.task.SchedulableInstance;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * A task for each unit. One that fails comes again later; one whose node is gone comes again
 * elsewhere.
 *
 * <p>The time of a unit's task is its place in its job, counted in seconds from 1970: it is always
 * due, however the clock jumps, and of several jobs each gets its turn.
 */
final class JobTasks {

  static final String TABLE = "unit_tasks";

  private static final String UNIT = "unit";
  private static final Duration RETRY = Duration.ofSeconds(5);

  private final OneTimeTask<Void> units;

  /** Does one unit. */
  interface UnitWork {
    void run(String job, int unit);
  }

  JobTasks(UnitWork unitWork) {
    units =
        Tasks.oneTime(UNIT)
            .onFailure((done, operations) -> operations.reschedule(done, later(done.getTimeDone())))
            .onDeadExecutionRevive()
            .execute((task, context) -> run(task.getId(), unitWork));
  }

  private static Instant later(Instant failedAt) {
    return failedAt.plus(RETRY);
  }

  private static void run(String id, UnitWork work) {
    int slash = id.indexOf('/');
    work.run(id.substring(0, slash), Integer.parseInt(id.substring(slash + 1)));
  }

  OneTimeTask<Void> units() {
    return units;
  }

  /** Schedules all units of a job, with the transaction of a connection. */
  void schedule(Connection connection, String job, int count) {
    List<SchedulableInstance<?>> instances = new ArrayList<>();
    for (int unit = 0; unit < count; unit++) {
      instances.add(
          SchedulableInstance.of(units.instance(job + "/" + unit), Instant.ofEpochSecond(unit)));
    }
    SchedulerClient.Builder.create(new OneConnection(connection), units)
        .tableName(TABLE)
        .build()
        .scheduleBatch(instances);
  }

  /** Drops the units of a job that nobody works on yet. */
  static void drop(Connection connection, String job) throws SQLException {
    try (PreparedStatement delete =
        connection.prepareStatement(
            "delete from "
                + TABLE
                + " where task_name = ? and task_instance like ?"
                + " and picked = false")) {
      delete.setString(1, UNIT);
      delete.setString(2, job + "/%");
      delete.executeUpdate();
    }
  }
}
