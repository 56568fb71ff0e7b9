package dev.fillplane.web;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.job.JobOwner;
import dev.fillplane.job.JobStatus;
import dev.fillplane.job.Jobs;
import dev.fillplane.job.KeyConflict;
import dev.fillplane.job.Keyed;
import dev.fillplane.job.TakenJob;
import dev.fillplane.job.WebhookTargets;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Json;
import dev.fillplane.web.watch.Note;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Takes jobs. */
final class JobRequests {

  static final String PATH = "/v1/jobs";
  static final String UPLOADS = "/v1/job-uploads";

  private static final String PARAMETERS =
      "confidence, unitsPerDay, everyDays, bagsPerPallet and webhook";

  private final Jobs jobs;
  private final SchemaGate gate;
  private final Intake intake;
  private final WebhookTargets targets;

  JobRequests(Jobs jobs, SchemaGate gate, Intake intake, WebhookTargets targets) {
    this.jobs = jobs;
    this.gate = gate;
    this.intake = intake;
    this.targets = targets;
  }

  void handle(JavalinConfig config) {
    config.routes.post(PATH, this::make);
    config.routes.post(UPLOADS, this::upload);
  }

  private void make(Context context) {
    check(context, Calculation.JSON);
    accept(context, reader -> reader.object());
  }

  private void upload(Context context) {
    check(context, PlanStreams.NDJSON);
    ObjectNode told = told(context);
    accept(context, reader -> reader.lines(told));
  }

  private static void check(Context context, String mediaType) {
    Accepted.check(context, Calculation.JSON);
    Body.check(context, mediaType);
  }

  /** The parameters of an upload, as the body of a job request would tell them. */
  private static ObjectNode told(Context context) {
    ObjectNode told = JsonNodeFactory.instance.objectNode();
    for (String name : context.queryParamMap().keySet()) {
      String value = context.queryParam(name);
      switch (name) {
        case "confidence" -> number(told, name, value);
        case "webhook" -> told.putObject(name).put("url", value);
        case "unitsPerDay", "everyDays", "bagsPerPallet" ->
            number(told.withObject("/deliveries"), name, value);
        default ->
            throw Refusal.of(
                Problem.Kind.BAD_REQUEST, "The parameters here are " + PARAMETERS + ".");
      }
    }
    return told;
  }

  /** A text that is no number is told as a text, for the contract to refuse. */
  private static void number(ObjectNode told, String name, String value) {
    if (value.matches("\\d{1,9}")) {
      told.put(name, Integer.parseInt(value));
    } else if (value.matches("\\d{1,9}\\.\\d{1,9}")) {
      told.put(name, Double.parseDouble(value));
    } else {
      told.put(name, value);
    }
  }

  /** A job that is fit to be taken, and the key of its request. */
  private record Wish(JobBody job, Optional<Keyed> key) {}

  /** Read in a place; taken by a thread of requests, since the store may be slow. */
  private void accept(Context context, Function<JobReader, JobBody> read) {
    Optional<String> key = IdempotencyKey.of(context);
    context.future(
        () ->
            intake
                .compute(
                    context,
                    body ->
                        new Wish(
                            read.apply(new JobReader(body, gate, targets)),
                            key.map(text -> new Keyed(text, digest(context, body)))))
                .thenAcceptAsync(wish -> take(context, wish), Connections.threads(context)));
  }

  private void take(Context context, Wish wish) {
    JobOwner owner =
        new JobOwner(Caller.of(context).tenant(), Optional.of(Note.of(context).trace()));
    TakenJob taken = take(owner, wish.key(), wish.job());
    context
        .status(202)
        .header("Location", PATH + "/" + taken.id())
        .header("Retry-After", "1")
        .contentType(Calculation.JSON)
        .result(taken.json());
    if (taken.replayed()) {
      context.header(IdempotencyKey.REPLAYED, "true");
    }
  }

  private TakenJob take(JobOwner caller, Optional<Keyed> key, JobBody job) {
    try {
      return jobs.accept(caller, job.terms(), job.units(), key, JobRequests::told);
    } catch (KeyConflict e) {
      throw e.stillRunning()
          ? new Refusal(
              Problem.of(Problem.Kind.STILL_RUNNING, "Ask again in a moment with the same key."),
              Map.of("Retry-After", "2"))
          : Refusal.of(Problem.Kind.KEY_REUSED, "Send another request with a key of its own.");
    }
  }

  private static byte[] told(JobStatus status) {
    return Json.bytes(Job.of(status), UnitSystem.METRIC);
  }

  /** Tells requests apart: where to, with which parameters, what. */
  private static String digest(Context context, byte[] body) {
    String query = context.queryString() == null ? "" : context.queryString();
    return Body.digest(context.path() + "?" + query, body);
  }
}
