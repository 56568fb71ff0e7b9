package dev.fillplane.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WebhookSecretsTest {

  private static final String FIRST = Base64.getEncoder().encodeToString(new byte[32]);
  private static final String SECOND =
      Base64.getEncoder().encodeToString("0123456789abcdef0123456789abcdef".getBytes());

  @TempDir private Path folder;

  @Test
  void fileIsMadeOnceForItsOwnerOnly() throws IOException {
    Path file = folder.resolve("data/master");
    List<String> made = texts(WebhookSecrets.open(file), "local");
    assertEquals(made, texts(WebhookSecrets.open(file), "local"));
    assertEquals(PosixFilePermissions.fromString("rw-------"), Files.getPosixFilePermissions(file));
    try (var files = Files.list(file.getParent())) {
      assertEquals(List.of(file), files.toList());
    }
  }

  /** 32 bytes are 256 bits; the standard asks for 24 to 64. */
  @Test
  void everyTenantHasItsOwn() throws IOException {
    WebhookSecrets secrets = WebhookSecrets.open(file(FIRST));
    assertNotEquals(texts(secrets, "local"), texts(secrets, "abcdefghijkl"));
    String text = texts(secrets, "local").get(0);
    assertTrue(text.startsWith("whsec_"), text);
    assertEquals(32, Base64.getDecoder().decode(text.substring(6)).length);
  }

  @Test
  void oldMastersSignAfterTheNewOne() throws IOException {
    String old = texts(WebhookSecrets.open(file(FIRST)), "local").get(0);
    String fresh = texts(WebhookSecrets.open(file(SECOND)), "local").get(0);
    assertEquals(
        List.of(fresh, old), texts(WebhookSecrets.open(file(SECOND + "\n\n" + FIRST)), "local"));
  }

  @Test
  void damagedFilesAreRefused() throws IOException {
    for (String content : List.of("", "\n", "not base64!", "c2hvcnQ=")) {
      Path file = file(content);
      assertThrows(IOException.class, () -> WebhookSecrets.open(file), content);
    }
  }

  private Path file(String content) throws IOException {
    return Files.writeString(folder.resolve("master"), content);
  }

  private static List<String> texts(WebhookSecrets secrets, String tenant) {
    return secrets.of(tenant).stream().map(WebhookSecret::text).toList();
  }
}
