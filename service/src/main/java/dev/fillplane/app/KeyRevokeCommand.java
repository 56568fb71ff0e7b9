package dev.fillplane.app;

import dev.fillplane.web.key.Key;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Takes a key out of its file. */
@Command(
    name = "revoke",
    description = "Takes a key out of the file; a service that runs refuses it at once.",
    mixinStandardHelpOptions = true)
final class KeyRevokeCommand implements Callable<Integer> {

  @Mixin private KeyFileOption file;

  @Parameters(paramLabel = "ID", description = "The id of the key, as list tells it.")
  private String id;

  @Override
  public Integer call() {
    try {
      List<Key> keys = new ArrayList<>(file.read());
      if (!keys.removeIf(key -> key.id().equals(id))) {
        System.err.println("There is no key " + id + ".");
        return 1;
      }
      file.write(keys);
      System.out.println("Revoked " + id + ".");
      return 0;
    } catch (IOException e) {
      System.err.println("Nothing was revoked. " + e.getMessage());
      return 2;
    }
  }
}
