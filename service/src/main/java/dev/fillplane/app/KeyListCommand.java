package dev.fillplane.app;

import dev.fillplane.web.key.Key;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists the keys of a file, a line each. */
@Command(
    name = "list",
    description = "Lists the keys, never their secrets.",
    mixinStandardHelpOptions = true)
final class KeyListCommand implements Callable<Integer> {

  @Mixin private KeyFileOption file;

  @Override
  public Integer call() {
    try {
      file.read().forEach(key -> System.out.println(line(key)));
      return 0;
    } catch (IOException e) {
      System.err.println("The file of keys cannot be used. " + e.getMessage());
      return 2;
    }
  }

  private static String line(Key key) {
    List<String> parts = new ArrayList<>();
    parts.add(key.id());
    parts.add(key.name());
    key.scopes().forEach(scope -> parts.add(scope.name().toLowerCase(Locale.ROOT)));
    parts.addAll(key.origins());
    key.perMinute().ifPresent(count -> parts.add(count + " a minute"));
    if (!key.tenant().equals(key.id())) {
      parts.add("for " + key.tenant());
    }
    key.made().ifPresent(parts::add);
    return String.join("  ", parts);
  }
}
