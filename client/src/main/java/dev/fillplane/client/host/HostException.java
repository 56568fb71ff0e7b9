package dev.fillplane.client.host;

/** There is no host of that name, or one that cannot run with this version of the interfaces. */
public final class HostException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  HostException(String message) {
    super(message);
  }

  HostException(String message, Throwable cause) {
    super(message, cause);
  }
}
