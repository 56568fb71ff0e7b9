package dev.fillplane.app;

import dev.fillplane.web.Version;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;

/** Entry of the runnable jar. */
@Command(
    name = "fillplane",
    description = "Plans a self-levelling underlayment pour.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionProvider.class,
    subcommands = {ServeCommand.class, KeyCommand.class, DemoCommand.class, PlanCommand.class})
public final class Main {

  private Main() {}

  /** Runs a command and exits with its code: 0 done, 1 findings prevent an answer, 2 usage. */
  public static void main(String[] arguments) {
    System.setProperty("java.awt.headless", "true");
    System.exit(command().execute(arguments));
  }

  /** The whole command line; words of options may be written in small letters. */
  static CommandLine command() {
    return new CommandLine(new Main()).setCaseInsensitiveEnumValuesAllowed(true);
  }

  static final class VersionProvider implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"fillplane " + Version.line()};
    }
  }
}
