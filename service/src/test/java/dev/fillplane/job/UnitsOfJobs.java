package dev.fillplane.job;

import static dev.fillplane.job.JobNodes.USUAL;
import static dev.fillplane.job.JobNodes.accept;
import static dev.fillplane.job.JobNodes.ended;
import static dev.fillplane.job.JobNodes.everyUnitOnce;
import static dev.fillplane.job.JobNodes.status;
import static dev.fillplane.job.JobNodes.unit;
import static dev.fillplane.job.JobNodes.units;
import static dev.fillplane.job.JobNodes.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Every unit of a job is planned once, in its turn. */
interface UnitsOfJobs {

  /** The store and the nodes on it. */
  JobNodes here();

  @Test
  default void everyUnitIsPlannedOnceAndStandsInItsPlace() {
    CountingPlanner planner = CountingPlanner.free();
    Jobs jobs = here().node(planner);
    String id = accept(jobs, units(60));
    JobStatus ended = ended(jobs, id);
    assertEquals(JobState.FINISHED, ended.state());
    assertEquals(60, ended.done());
    assertEquals(0, ended.failed());
    everyUnitOnce(jobs, id, 60);
    assertTrue(planner.seen().values().stream().allMatch(times -> times == 1));
  }

  @Test
  default void aUnitWithoutAPlanStopsNoOther() {
    Jobs jobs = here().node(CountingPlanner.free());
    String id = accept(jobs, List.of(unit("one"), unit("bad two"), unit("three")));
    JobStatus ended = ended(jobs, id);
    assertEquals(JobState.FINISHED, ended.state());
    assertEquals(1, ended.failed());
    assertEquals(List.of(new JobStatus.FailedUnit(1, "bad two")), ended.failures());
    everyUnitOnce(jobs, id, 3);
    assertEquals(2, jobs.needs("me", id).orElseThrow().order().planned());
    String bad = accept(jobs, List.of(unit("bad one")));
    assertEquals(JobState.FAILED, ended(jobs, bad).state());
  }

  @Test
  default void aJobTellsHowFarItIs() {
    CountingPlanner planner = CountingPlanner.held();
    Jobs jobs = here().node(planner);
    String id = accept(jobs, units(6));
    planner.awaitBegun(2);
    assertEquals(JobState.QUEUED, status(jobs, id).state());
    planner.let(3);
    until(() -> status(jobs, id).done() == 3);
    assertEquals(JobState.RUNNING, status(jobs, id).state());
    assertEquals(3, jobs.needs("me", id).orElseThrow().order().planned());
    planner.let(3);
    assertEquals(JobState.FINISHED, ended(jobs, id).state());
  }

  /** A small job does not wait for all of a large one. */
  @Test
  default void jobsTakeTurns() {
    CountingPlanner planner = CountingPlanner.held();
    Jobs jobs = here().node(planner);
    String large = accept(jobs, units(60));
    planner.awaitBegun(2);
    String small = accept(jobs, List.of(unit("small")));
    planner.let(20);
    until(() -> status(jobs, small).done() == 1);
    assertTrue(status(jobs, large).done() < 60);
    planner.let(41);
    ended(jobs, large);
  }

  @Test
  default void cancelledInTheMiddle() {
    CountingPlanner planner = CountingPlanner.held();
    Jobs jobs = here().node(planner);
    String id = accept(jobs, units(40));
    planner.let(4);
    until(() -> status(jobs, id).done() == 4);
    assertTrue(jobs.delete("me", id));
    assertEquals(JobState.CANCELLED, status(jobs, id).state());
    planner.let(40);
    String next = accept(jobs, units(3));
    ended(jobs, next);
    assertEquals(JobState.CANCELLED, status(jobs, id).state());
    // two were being worked on, and two more may have been taken up
    assertTrue(status(jobs, id).done() <= 8, "done " + status(jobs, id).done());
    assertTrue(jobs.delete("me", id), "then it is forgotten");
    assertEquals(Optional.empty(), jobs.status("me", id));
    assertFalse(jobs.delete("me", id));
  }

  @Test
  default void nobodySeesJobsOfOthers() {
    Jobs jobs = here().node(CountingPlanner.free());
    String id = accept(jobs, units(2));
    ended(jobs, id);
    assertEquals(Optional.empty(), jobs.status("you", id));
    assertEquals(Optional.empty(), jobs.rows("you", id, 0, 10));
    assertEquals(Optional.empty(), jobs.needs("you", id));
    assertFalse(jobs.delete("you", id));
    assertEquals(Optional.empty(), jobs.status("me", "no such job"));
    assertEquals(2, status(jobs, id).done());
  }

  /** All units are done, and nobody has noted the end yet: there is nothing to cancel. */
  @Test
  default void aJobThatIsDoneIsForgotten() {
    Clock clock = Clock.systemUTC();
    try (Database database = Database.open(here().store(), 2)) {
      JobTasks tasks = new JobTasks((job, unit) -> {});
      Sweeper sweeper = new Sweeper(database, clock);
      JobStore jobs = new JobStore(database, tasks, sweeper, clock, JobSettings.KEPT);
      String id =
          jobs.accept(JobOwner.of("me"), USUAL, units(1), Optional.empty(), status -> new byte[0])
              .id();
      UnitAnswer answer = new UnitAnswer(new byte[] {'{', '}'}, Optional.empty());
      database.change(
          connection -> {
            UnitTable.answer(connection, id, 0, answer);
            return null;
          });
      assertTrue(jobs.delete("me", id));
      assertEquals(Optional.empty(), jobs.status("me", id));
    }
  }
}
