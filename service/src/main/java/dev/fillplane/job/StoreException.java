package dev.fillplane.job;

/** The store of jobs cannot be reached at the moment; the message is for the caller. */
public final class StoreException extends RuntimeException {

  private static final long serialVersionUID = 1;

  StoreException(String message, Throwable cause) {
    super(message, cause);
  }
}
