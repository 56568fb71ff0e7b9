package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A text that gives one line and then nothing more. */
@Timeout(60)
class LineRunTest {

  private final ExecutorService workers = Executors.newFixedThreadPool(1);
  private final CountDownLatch stuck = new CountDownLatch(1);
  private volatile boolean reading;

  private final InputStream text =
      new InputStream() {
        private boolean given;

        @Override
        public int read() {
          throw new UnsupportedOperationException();
        }

        @Override
        public int read(byte[] to, int from, int length) throws IOException {
          if (!given) {
            given = true;
            to[from] = 'x';
            to[from + 1] = '\n';
            return 2;
          }
          reading = true;
          stuck.countDown();
          try {
            new CountDownLatch(1).await();
            return -1;
          } catch (InterruptedException e) {
            throw new InterruptedIOException();
          } finally {
            reading = false;
          }
        }
      };

  private final LineRun run =
      new LineRun(text, line -> new PlanLines.Answer(line.number(), true, line.text()), workers, 2);

  @AfterEach
  void stop() {
    workers.shutdownNow();
  }

  /** The server must not hand the connection to another request while this one reads it. */
  @Test
  void nobodyReadsAfterTheDelivery() {
    IOException gone =
        assertThrows(
            IOException.class,
            () ->
                run.deliver(
                    answer -> {
                      untilStuck();
                      throw new IOException("gone");
                    }));
    assertEquals("gone", gone.getMessage());
    assertFalse(reading);
  }

  @Test
  void whoStopsItIsToldTheNextLine() {
    PlanLines.CutShort cut =
        assertThrows(
            PlanLines.CutShort.class,
            () ->
                run.deliver(
                    answer -> {
                      untilStuck();
                      run.stop();
                    }));
    assertEquals(2, cut.line());
    assertTrue(cut.getCause() instanceof InterruptedException);
    assertFalse(reading);
  }

  private void untilStuck() throws IOException {
    try {
      stuck.await();
    } catch (InterruptedException e) {
      throw new InterruptedIOException();
    }
  }
}
