package dev.fillplane.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.web.key.Key;
import dev.fillplane.web.key.KeyBook;
import dev.fillplane.web.key.KeyFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command key, in this process. */
class KeyCommandTest {

  @TempDir private Path folder;
  private final PrintStream out = System.out;
  private final ByteArrayOutputStream said = new ByteArrayOutputStream();

  @BeforeEach
  void listen() {
    System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
  }

  @AfterEach
  void rest() {
    System.setOut(out);
  }

  @Test
  void madeKeyOpens() throws IOException {
    List<String> lines = says(0, "make --name office --per-minute 600");
    assertEquals(2, lines.size(), lines.toString());
    String text = lines.get(0).substring("Key: ".length());
    Key key = book().find(text).orElseThrow();
    assertEquals("office", key.name());
    assertEquals(600, key.perMinute().orElseThrow());
    assertFalse(Files.readString(file()).contains(text.substring(16)));
    assertFalse(Files.exists(folder.resolve("master")), "no jobs, no webhooks");
  }

  @Test
  void keyForJobsComesWithItsWebhookSecret() throws IOException {
    List<String> lines = says(0, "make --name office --scope calculate,jobs");
    String secret = lines.get(2).substring("Webhook secret: ".length());
    String id = KeyFile.read(file()).get(0).id();
    assertTrue(secret.startsWith("whsec_"), secret);
    assertEquals(List.of(secret), says(0, "webhook-secret " + id));
    assertNotEquals(List.of(secret), says(0, "webhook-secret"));
  }

  @Test
  void keyThatFollowsSharesJobsAndWebhookSecret() throws IOException {
    String secret = says(0, "make --name old --scope jobs").get(2);
    String old = KeyFile.read(file()).get(0).id();
    assertEquals(secret, says(0, "make --name new --scope jobs --follows " + old).get(2));
    says(0, "revoke " + old);
    Key key = KeyFile.read(file()).get(0);
    assertEquals(old, key.tenant());
    assertNotEquals(old, key.id());
  }

  @Test
  void listTellsAllButTheSecrets() throws IOException {
    String text = says(0, "make --name shop --scope browser --origin https://shop.example").get(0);
    String line = says(0, "list").get(0);
    String id = KeyFile.read(file()).get(0).id();
    assertTrue(
        line.matches(id + "  shop  browser  https://shop.example  \\d{4}-\\d\\d-\\d\\d"), line);
    assertFalse(line.contains(text.substring(text.length() - 43)), line);
  }

  @Test
  void revokedKeyIsGone() throws IOException {
    says(0, "make --name one");
    says(0, "make --name two");
    String id = KeyFile.read(file()).get(0).id();
    assertEquals(List.of("Revoked " + id + "."), says(0, "revoke " + id));
    assertEquals(List.of("two"), KeyFile.read(file()).stream().map(Key::name).toList());
    says(1, "revoke " + id);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "make",
        "make --name a --scope all",
        "make --name a --scope browser",
        "make --name a --scope browser,jobs --origin https://shop.example",
        "make --name a --origin https://shop.example",
        "make --name a --scope browser --origin https://shop.example/path",
        "make --name a --per-minute 0",
        "make --name a --follows abcdefghijkl",
        "revoke",
        ""
      })
  void whatIsWrongMakesNoFile(String command) {
    assertEquals(List.of(), says(2, command));
    assertFalse(Files.exists(file()));
  }

  @Test
  void damagedFileIsLeftAsItIs() throws IOException {
    Files.writeString(file(), "{\"keys\": [");
    says(2, "make --name a");
    says(2, "list");
    says(2, "revoke abcdefghijkl");
    assertEquals("{\"keys\": [", Files.readString(file()));
  }

  private Path file() {
    return folder.resolve("keys.json");
  }

  private KeyBook book() throws IOException {
    return KeyBook.open(file(), text -> {});
  }

  /** What the command {@code key} says, with the files of this test told where it takes them. */
  private List<String> says(int code, String command) {
    List<String> arguments = new ArrayList<>(List.of("key"));
    if (!command.isEmpty()) {
      arguments.addAll(List.of(command.split(" ")));
    }
    if (!command.startsWith("webhook") && !command.isEmpty()) {
      arguments.addAll(List.of("--keys", file().toString()));
    }
    if (command.startsWith("make") || command.startsWith("webhook")) {
      arguments.addAll(List.of("--webhook-master", folder.resolve("master").toString()));
    }
    said.reset();
    assertEquals(code, Main.command().execute(arguments.toArray(String[]::new)), command);
    return said.toString(StandardCharsets.UTF_8).lines().toList();
  }
}
