package dev.fillplane.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStream;
import java.net.SocketTimeoutException;
import java.net.http.HttpTimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class PatientInputTest {

  @Test
  void silenceIsNoFaultWhileNothingIsOwed() throws IOException {
    try (PatientInput input = new PatientInput(silentFor(3), () -> false)) {
      assertEquals('x', input.read());
    }
  }

  @Test
  void whatIsOwedIsLateAfterOneTimeOut() throws IOException {
    try (PatientInput input = new PatientInput(silentFor(1), () -> true)) {
      assertThrows(HttpTimeoutException.class, input::read);
    }
  }

  @Test
  void whatBecomesOwedGetsTheWholeTime() throws IOException {
    AtomicInteger asked = new AtomicInteger();
    try (PatientInput input = new PatientInput(silentFor(1), () -> asked.getAndIncrement() > 0)) {
      assertEquals('x', input.read());
    }
    asked.set(0);
    try (PatientInput input = new PatientInput(silentFor(2), () -> asked.getAndIncrement() > 0)) {
      assertThrows(HttpTimeoutException.class, input::read);
    }
  }

  private static InputStream silentFor(int timeouts) {
    return new InputStream() {
      private int left = timeouts;

      @Override
      public int read() throws IOException {
        if (left-- > 0) {
          throw new SocketTimeoutException();
        }
        return 'x';
      }

      @Override
      public int read(byte[] bytes, int from, int length) throws IOException {
        bytes[from] = (byte) read();
        return 1;
      }
    };
  }
}
