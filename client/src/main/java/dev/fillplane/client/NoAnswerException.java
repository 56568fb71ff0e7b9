package dev.fillplane.client;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.net.http.HttpConnectTimeoutException;
import java.net.http.HttpTimeoutException;
import javax.net.ssl.SSLException;

/**
 * There was no answer: no connection, none in time, broken off, or nothing that can be read as the
 * contract says. Whether the service did the work is unknown. The reason is the cause.
 */
public final class NoAnswerException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  NoAnswerException(String message, Throwable cause) {
    super(message, cause);
  }

  /** Whether the connection failed or broke, which another attempt may mend. */
  boolean mayPass() {
    Throwable cause = getCause();
    boolean late =
        cause instanceof HttpTimeoutException && !(cause instanceof HttpConnectTimeoutException);
    return cause instanceof IOException
        && !late
        && !(cause instanceof JsonProcessingException)
        && !(cause instanceof SSLException);
  }
}
