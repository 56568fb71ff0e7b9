package dev.fillplane.client;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.SocketTimeoutException;
import java.net.http.HttpTimeoutException;
import java.util.function.BooleanSupplier;

/** What a socket brings; its time-out counts only while an answer is owed. */
final class PatientInput extends FilterInputStream {
  private final BooleanSupplier owed;

  PatientInput(InputStream in, BooleanSupplier owed) {
    super(in);
    this.owed = owed;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
  }

  @Override
  public int read(byte[] bytes, int from, int length) throws IOException {
    boolean owing = owed.getAsBoolean();
    while (true) {
      try {
        return in.read(bytes, from, length);
      } catch (SocketTimeoutException e) {
        if (owing) {
          throw (IOException) new HttpTimeoutException("No answer in time.").initCause(e);
        }
        // What became due meanwhile gets the whole time from now on.
        owing = owed.getAsBoolean();
      }
    }
  }
}
