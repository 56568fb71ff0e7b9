package dev.fillplane.web;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.FindingsException;
import dev.fillplane.finding.Place;
import dev.fillplane.job.JobNeeds;
import dev.fillplane.job.JobStatus;
import dev.fillplane.job.Jobs;
import dev.fillplane.job.UnitRow;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Answer;
import dev.fillplane.web.json.Json;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Tells of jobs, and cancels or forgets them. */
final class JobAnswers {

  private static final String JOB = JobRequests.PATH + "/{id}";
  private static final int USUAL_LIMIT = 20;
  private static final int MOST = 100;

  /** Units that a node plans in a second, roughly; for when to look again. */
  private static final int PACE = 4;

  private static final int LONGEST_WAIT = 60;

  private final Jobs jobs;
  private final Intake intake;

  JobAnswers(Jobs jobs, Intake intake) {
    this.jobs = jobs;
    this.intake = intake;
  }

  void handle(JavalinConfig config) {
    config.routes.get(JOB, this::status);
    config.routes.delete(JOB, this::delete);
    config.routes.get(JOB + "/plans", this::plans);
    config.routes.get(JOB + "/order", this::order);
  }

  private void status(Context context) {
    only(context, Set.of());
    JobStatus status = found(jobs.status(Caller.of(context).tenant(), id(context)));
    if (!status.state().ended()) {
      int wait = Math.min(LONGEST_WAIT, 1 + (status.of() - status.done()) / PACE);
      context.header("Retry-After", Integer.toString(wait));
    }
    Reply.json(context, UnitSystem.METRIC, Job.of(status));
  }

  private void delete(Context context) {
    if (!jobs.delete(Caller.of(context).tenant(), id(context))) {
      throw noJob();
    }
    context.status(204);
  }

  private void plans(Context context) throws IOException {
    Accepted.check(context, Calculation.JSON);
    only(context, Set.of("cursor", "limit"));
    int limit = limit(context);
    String id = id(context);
    JobStatus known = found(jobs.status(Caller.of(context).tenant(), id));
    int from = from(context, known.id());
    List<UnitRow> rows = found(jobs.rows(Caller.of(context).tenant(), id, from, limit));
    boolean more = !rows.isEmpty() && rows.get(rows.size() - 1).unit() + 1 < known.of();
    Optional<Cursor> next =
        more ? Optional.of(new Cursor(id, from + rows.size())) : Optional.empty();
    context.contentType(Calculation.JSON);
    new JobPage(rows, next).write(context.outputStream());
  }

  private static int limit(Context context) {
    String told = context.queryParam("limit");
    if (told == null) {
      return USUAL_LIMIT;
    }
    int limit = told.matches("\\d{1,4}") ? Integer.parseInt(told) : 0;
    if (limit < 1 || limit > MOST) {
      throw Refusal.of(
          Problem.Kind.BAD_REQUEST,
          "The parameter limit must be a whole number from 1 to " + MOST + ".");
    }
    return limit;
  }

  /** The first unit of the page. */
  private static int from(Context context, String job) {
    String told = context.queryParam("cursor");
    if (told == null) {
      return 0;
    }
    Optional<Cursor> cursor = Cursor.of(told);
    Findings findings = new Findings();
    Place place = Place.root().at("cursor");
    if (cursor.isEmpty()) {
      findings.error("cursor-unknown", place);
    } else if (!cursor.get().job().equals(job)) {
      findings.error("cursor-of-another-job", place);
    }
    try {
      findings.throwIfErrors();
    } catch (FindingsException e) {
      throw Refusal.of(e, UnitSystem.METRIC);
    }
    return cursor.get().unit();
  }

  private void order(Context context) {
    Accepted.check(context, Calculation.JSON);
    only(context, Set.of("units"));
    UnitSystem units = UnitsParameter.of(context);
    JobNeeds needs = found(jobs.needs(Caller.of(context).tenant(), id(context)));
    intake.answer(context, () -> Json.bytes(Answer.of(units, needs.order()), units));
  }

  private static void only(Context context, Set<String> names) {
    if (!names.containsAll(context.queryParamMap().keySet())) {
      throw Refusal.of(
          Problem.Kind.BAD_REQUEST,
          names.isEmpty()
              ? "There are no parameters here."
              : "The parameters here are " + String.join(" and ", new TreeSet<>(names)) + ".");
    }
  }

  private static String id(Context context) {
    return context.pathParam("id");
  }

  private static <T> T found(Optional<T> told) {
    return told.orElseThrow(JobAnswers::noJob);
  }

  private static Refusal noJob() {
    return Refusal.of(
        Problem.Kind.NOT_FOUND, "You have no such job; it may have expired or been forgotten.");
  }
}
