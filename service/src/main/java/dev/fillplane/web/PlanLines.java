package dev.fillplane.web;

import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Json;
import dev.fillplane.web.watch.BareFault;
import dev.fillplane.web.watch.Note;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.UnaryOperator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Plans the lines of a text, a few at a time on all processors, and answers them in their order.
 * Reading keeps only so far ahead of the answers: where nobody takes these, it stops. Safe to
 * share.
 */
public final class PlanLines implements AutoCloseable {

  /** Bytes of the longest line. */
  public static final int LINE_BYTES = 4_000_000;

  private static final Logger LOG = LoggerFactory.getLogger(PlanLines.class);

  private final UnaryOperator<byte[]> planner;
  private final int places;
  private final ExecutorService workers;

  /** Plans with {@code planner}, which gives the plan of a request or throws a refusal. */
  PlanLines(UnaryOperator<byte[]> planner, int places) {
    this.planner = planner;
    this.places = Math.max(1, places);
    this.workers = Executors.newFixedThreadPool(this.places);
  }

  /** On all processors of the machine, without a server. */
  public static PlanLines local(PlanDesk desk) {
    int places = Runtime.getRuntime().availableProcessors();
    return new PlanLines(desk::answer, places);
  }

  /**
   * The answer of a line.
   *
   * @param line counted from 1
   * @param planned whether {@code json} is a plan; else it is a problem that tells the line
   */
  public record Answer(int line, boolean planned, byte[] json) {}

  /** Where answers go. */
  @FunctionalInterface
  public interface Sink {
    void accept(Answer answer) throws IOException;
  }

  /** Tells that not all lines could be read; those before {@link #line} are answered. */
  static final class CutShort extends IOException {

    private static final long serialVersionUID = 1;

    private final int line;

    CutShort(int line, Throwable cause) {
      super("the text stops in line " + line, cause);
      this.line = line;
    }

    /** The line that was being read. */
    int line() {
      return line;
    }
  }

  /**
   * Answers all lines of {@code in} that are not blank.
   *
   * @throws IOException if {@code in} fails, after the answers of what came before; or if {@code
   *     sink} does, and then nothing more is read or planned
   */
  public void answer(InputStream in, Sink sink) throws IOException {
    run(in, Optional.empty()).deliver(sink);
  }

  /** The same as part of the request of a note. */
  LineRun run(InputStream in, Optional<Note> note) {
    return new LineRun(in, line -> answer(line, note), workers, 2 * places);
  }

  private Answer answer(LineReader.Line line, Optional<Note> note) {
    try {
      if (line.tooLong()) {
        throw Refusal.of(
            Problem.Kind.TOO_LARGE,
            "A line may have at most " + LINE_BYTES + " bytes; see limits in /v1/capabilities.");
      }
      return new Answer(line.number(), true, planner.apply(line.text()));
    } catch (Refusal refusal) {
      return refused(line.number(), refusal.problem(), note);
    } catch (CancellationException e) {
      return refused(line.number(), PlanStreams.stops(), note);
    } catch (RuntimeException | Error e) {
      LOG.atError()
          .addKeyValue("request", note.map(Note::id).orElse("none"))
          .addKeyValue("trace", note.map(known -> known.trace().id()).orElse("none"))
          .addKeyValue("line", line.number())
          .setCause(BareFault.of(e))
          .log("a line failed");
      Problem failed = Problem.of(Problem.Kind.FAILED, "This is a fault of the service.");
      return refused(line.number(), failed, note);
    }
  }

  /** The answer of a line that has no plan. */
  static Answer refused(int line, Problem problem, Optional<Note> note) {
    Problem told = note.map(problem::forRequest).orElse(problem);
    byte[] json = Json.bytes(LineProblem.of(line, told), UnitSystem.METRIC);
    return new Answer(line, false, json);
  }

  /** Ends the work that is going on. */
  @Override
  public void close() {
    workers.shutdownNow();
  }
}
