package dev.fillplane.app;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Prints the secret with which the webhooks of a key are signed. */
@Command(
    name = "webhook-secret",
    description = "Prints the secret with which webhooks are signed.",
    mixinStandardHelpOptions = true)
final class WebhookSecretCommand implements Callable<Integer> {

  @Mixin private WebhookOption webhooks;

  @Parameters(
      paramLabel = "ID",
      defaultValue = "local",
      description =
          "The id of the key, or of the one it takes over from; local, for a service without keys,"
              + " unless told.")
  private String tenant;

  @Override
  public Integer call() {
    try {
      System.out.println(webhooks.secrets().of(tenant).get(0).text());
      return 0;
    } catch (IOException e) {
      System.err.println("There is no secret. " + e.getMessage());
      return 2;
    }
  }
}
