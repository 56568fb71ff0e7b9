package dev.fillplane.job;

import java.nio.file.Path;

/**
 * How receivers are told.
 *
 * @param targets where messages may go
 * @param master file from which secrets are derived; made with the first message
 */
public record WebhookSettings(WebhookTargets targets, Path master) {

  /** The open internet, the master beside the jobs. */
  public static WebhookSettings usual() {
    return new WebhookSettings(WebhookTargets.usual(), Path.of("fillplane-data", "webhook-master"));
  }
}
