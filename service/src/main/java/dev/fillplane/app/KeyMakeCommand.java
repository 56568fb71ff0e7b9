package dev.fillplane.app;

import dev.fillplane.job.WebhookSecrets;
import dev.fillplane.web.key.Key;
import dev.fillplane.web.key.NewKey;
import dev.fillplane.web.key.Scope;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Makes a key and prints it, this once. */
@Command(
    name = "make",
    description = "Makes a key and prints it, this once; a service that runs takes it at once.",
    mixinStandardHelpOptions = true)
final class KeyMakeCommand implements Callable<Integer> {

  @Mixin private KeyFileOption file;
  @Mixin private WebhookOption webhooks;

  @Option(names = "--name", required = true, description = "What people call it.")
  private String name;

  @Option(
      names = "--scope",
      split = ",",
      defaultValue = "calculate",
      description = "What it allows: calculate, jobs, or browser alone; calculate unless told.")
  private List<Scope> scopes;

  @Option(
      names = "--origin",
      paramLabel = "URL",
      description = "With the scope browser: of which pages it may be used.")
  private List<String> origins = List.of();

  @Option(names = "--per-minute", description = "Requests in a minute, if not as serve has it.")
  private Integer perMinute;

  @Option(
      names = "--follows",
      paramLabel = "ID",
      description = "The key that it takes over from: it sees the jobs of that one.")
  private String follows;

  @Override
  public Integer call() {
    try {
      List<Key> keys = new ArrayList<>(file.read());
      NewKey made = NewKey.make(wish(keys), LocalDate.now(ZoneOffset.UTC));
      keys.add(made.key());
      String text = text(made);
      file.write(keys);
      System.out.print(text);
      return 0;
    } catch (IllegalArgumentException | IOException e) {
      System.err.println("No key was made: " + e.getMessage());
      return 2;
    }
  }

  private NewKey.Wish wish(List<Key> keys) {
    return new NewKey.Wish(
        name,
        scopes,
        origins,
        perMinute == null ? OptionalInt.empty() : OptionalInt.of(perMinute),
        Optional.ofNullable(follows).map(id -> tenant(id, keys)));
  }

  private static String tenant(String id, List<Key> keys) {
    return keys.stream()
        .filter(key -> key.id().equals(id))
        .findFirst()
        .map(Key::tenant)
        .orElseThrow(() -> new IllegalArgumentException("there is no key " + id + " to follow."));
  }

  private String text(NewKey made) throws IOException {
    String text = "Key: " + made.text() + "\nIt is not shown again.\n";
    if (!made.key().scopes().contains(Scope.JOBS)) {
      return text;
    }
    WebhookSecrets secrets = webhooks.secrets();
    return text + "Webhook secret: " + secrets.of(made.key().tenant()).get(0).text() + "\n";
  }
}
