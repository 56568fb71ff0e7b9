package dev.fillplane.web;

import dev.fillplane.web.watch.Note;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.io.EndPoint;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Plans one unit a line, as long as lines come. A caller who stops reading stops the work, one who
 * is gone ends it.
 */
final class PlanStreams implements AutoCloseable {

  static final String PATH = "/v1/plan-streams";
  static final String NDJSON = "application/x-ndjson";

  /** Streams that may be open at once; each keeps some lines in memory. */
  static final int MOST = 8;

  /** How long a stream may stand still: nothing is sent and nothing taken. */
  private static final long IDLE_MILLIS = 120_000;

  private static final Logger LOG = LoggerFactory.getLogger(PlanStreams.class);

  private final PlanLines lines;
  private final long idleMillis;
  private final Set<LineRun> open = ConcurrentHashMap.newKeySet();
  private boolean stopping;

  PlanStreams(PlanLines lines) {
    this(lines, IDLE_MILLIS);
  }

  PlanStreams(PlanLines lines, long idleMillis) {
    this.lines = lines;
    this.idleMillis = idleMillis;
  }

  void handle(Context context) throws IOException {
    Accepted.check(context, NDJSON);
    Body.check(context, NDJSON);
    Optional<Note> note = Optional.of(Note.of(context));
    LineRun run = lines.run(context.req().getInputStream(), note);
    admit(run);
    EndPoint connection = Connections.of(context);
    long usual = connection.getIdleTimeout();
    connection.setIdleTimeout(idleMillis);
    try {
      deliver(run, new StreamedAnswers(context), note);
    } finally {
      connection.setIdleTimeout(usual);
      open.remove(run);
    }
  }

  private void admit(LineRun run) {
    synchronized (open) {
      if (stopping || open.size() >= MOST) {
        throw new Refusal(stopping ? stops() : full(), Map.of("Retry-After", "10"));
      }
      open.add(run);
    }
  }

  private static void deliver(LineRun run, StreamedAnswers answers, Optional<Note> note) {
    try {
      deliverAll(run, answers, note);
    } catch (IOException e) {
      LOG.debug("the caller of request {} is gone", note.orElseThrow().id(), e);
    }
  }

  private static void deliverAll(LineRun run, StreamedAnswers answers, Optional<Note> note)
      throws IOException {
    try {
      run.deliver(answers);
    } catch (PlanLines.CutShort e) {
      if (!answers.begun()) {
        throw new Refusal(why(e.getCause()), Map.of());
      }
      answers.accept(PlanLines.refused(e.line(), why(e.getCause()), note));
    }
    answers.end();
  }

  private static Problem why(Throwable cause) {
    if (cause instanceof InterruptedException) {
      return stops();
    }
    for (Throwable at = cause; at != null; at = at.getCause()) {
      if (at instanceof TimeoutException) {
        return Problem.of(Problem.Kind.TIMED_OUT, "Nothing came for too long; begin again here.");
      }
    }
    return Problem.of(Problem.Kind.BAD_REQUEST, "The body did not arrive whole.");
  }

  /** What the lines get that are not planned any more. */
  static Problem stops() {
    return Problem.of(Problem.Kind.BUSY, "The service is stopping; begin again from this line.");
  }

  private static Problem full() {
    return Problem.of(Problem.Kind.BUSY, "Every place for a stream is taken; try again later.");
  }

  /** How many streams are being answered. */
  int open() {
    return open.size();
  }

  /** Takes no more streams; open ones answer what they have read and end with a problem. */
  @Override
  public void close() {
    synchronized (open) {
      stopping = true;
      open.forEach(LineRun::stop);
    }
  }
}
