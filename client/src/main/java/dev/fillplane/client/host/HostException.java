package dev.fillplane.client.host;

/**
 * There is no host of that name, one that cannot run with this version of the interfaces, or a run
 * that did not reach its end; a job that was lost sight of is named, so that it can be taken up
 * again by {@link dev.fillplane.client.FillplaneClient#job}.
 */
public final class HostException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  HostException(String message) {
    super(message);
  }

  HostException(String message, Throwable cause) {
    super(message, cause);
  }
}
