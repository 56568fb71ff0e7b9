package dev.fillplane.web;

import dev.fillplane.web.PlanLines.Answer;
import dev.fillplane.web.PlanLines.CutShort;
import dev.fillplane.web.PlanLines.Sink;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.function.Function;

/**
 * One text on its way: a thread of its own reads lines into a window, and who delivers takes their
 * answers out. Two threads, so that a caller who waits for an answer before sending on gets it.
 */
final class LineRun {

  private final LineReader lines;
  private final Function<LineReader.Line, Answer> work;
  private final OrderedWindow<Answer> window;
  private final Thread reading = new Thread(this::read, "lines");
  private volatile boolean stopped;

  LineRun(
      InputStream in, Function<LineReader.Line, Answer> work, ExecutorService workers, int width) {
    this.lines = new LineReader(in, PlanLines.LINE_BYTES);
    this.work = work;
    this.window = new OrderedWindow<>(workers, width);
    reading.setDaemon(true);
  }

  /**
   * Gives {@code sink} one answer after the other.
   *
   * @throws CutShort if not all lines could be read; those before are answered
   * @throws IOException of the sink; then nothing more is read and no more work begun
   */
  void deliver(Sink sink) throws IOException {
    reading.start();
    try {
      for (Optional<Answer> next = window.take(); next.isPresent(); next = window.take()) {
        sink.accept(next.get());
      }
    } catch (ExecutionException | CancellationException e) {
      throw new CutShort(lines.number(), e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException();
    } finally {
      endReading();
      window.cancel();
    }
  }

  /** Reads no more; what was read is answered, and the delivery is cut short. */
  void stop() {
    stopped = true;
    reading.interrupt();
  }

  private void read() {
    try {
      var line = lines.next();
      while (line.isPresent() && !stopped) {
        LineReader.Line read = line.get();
        window.put(() -> work.apply(read));
        line = lines.next();
      }
      if (line.isPresent()) {
        throw new InterruptedException();
      }
      window.end();
    } catch (IOException | InterruptedException | RuntimeException | Error e) {
      window.fail(stopped ? new InterruptedException() : e);
    }
  }

  /** The text must not be read any more once its delivery is over. */
  private void endReading() {
    reading.interrupt();
    boolean interrupted = false;
    while (reading.isAlive()) {
      try {
        reading.join();
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
