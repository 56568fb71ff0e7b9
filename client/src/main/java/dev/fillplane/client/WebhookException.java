package dev.fillplane.client;

/** A webhook that is not from the service, was changed on its way, or is old. */
public final class WebhookException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  WebhookException(String message) {
    super(message);
  }
}
