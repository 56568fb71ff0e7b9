package dev.fillplane.client;

/**
 * There was no answer: no connection, none in time, broken off, or nothing that can be read as the
 * contract says. Whether the service did the work is unknown. The reason is the cause.
 */
public final class NoAnswerException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  NoAnswerException(String message, Throwable cause) {
    super(message, cause);
  }
}
