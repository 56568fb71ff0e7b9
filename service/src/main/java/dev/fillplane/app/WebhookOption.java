package dev.fillplane.app;

import dev.fillplane.job.WebhookSecrets;
import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The file from which the secrets of webhooks are derived; the same for every node. */
final class WebhookOption {

  @Option(
      names = "--webhook-master",
      paramLabel = "FILE",
      defaultValue = "fillplane-data/webhook-master",
      description =
          "The file from which the secrets of webhooks are derived; made where there is none."
              + " ${DEFAULT-VALUE} unless told.")
  private Path file;

  /** The secrets; makes the file where there is none. */
  WebhookSecrets secrets() throws IOException {
    return WebhookSecrets.open(file);
  }
}
