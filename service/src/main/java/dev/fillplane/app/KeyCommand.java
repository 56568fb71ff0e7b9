package dev.fillplane.app;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Makes, lists and revokes the keys of callers. */
@Command(
    name = "key",
    description = "Makes, lists and revokes the keys of callers.",
    mixinStandardHelpOptions = true,
    subcommands = {
      KeyMakeCommand.class,
      KeyListCommand.class,
      KeyRevokeCommand.class,
      WebhookSecretCommand.class
    })
final class KeyCommand implements Runnable {

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Say what to do with keys.");
  }
}
