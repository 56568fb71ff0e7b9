package dev.fillplane.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

/**
 * The secrets of webhooks, one for each tenant, all derived from the master secrets of one file, so
 * that none is stored by itself: HMAC-SHA256 of the tenant under the master.
 *
 * <p>The file has a master a line. The first makes the secrets that are shown; messages are signed
 * under every one, so that receivers can change over. All nodes of a service need the same file.
 */
public final class WebhookSecrets {

  private static final int MASTER_BYTES = 32;
  private static final String PURPOSE = "fillplane webhook of ";

  private final List<byte[]> masters;

  private WebhookSecrets(List<byte[]> masters) {
    this.masters = masters;
  }

  /**
   * Reads the masters of {@code file}; makes the file, for its owner's eyes only, where there is
   * none.
   *
   * @throws IOException with a sentence for people if it cannot be read, made or understood
   */
  public static WebhookSecrets open(Path file) throws IOException {
    if (!Files.exists(file)) {
      make(file);
    }
    List<byte[]> masters = new ArrayList<>();
    for (String line : Files.readAllLines(file)) {
      if (!line.isBlank()) {
        masters.add(master(line.strip(), file));
      }
    }
    if (masters.isEmpty()) {
      throw new IOException(file + " has no master secret of webhooks.");
    }
    return new WebhookSecrets(masters);
  }

  /** The secrets of {@code tenant}: the one to show first, then those that are on their way out. */
  public List<WebhookSecret> of(String tenant) {
    byte[] purpose = (PURPOSE + tenant).getBytes(StandardCharsets.UTF_8);
    return masters.stream().map(master -> new WebhookSecret(Hmac.sha256(master, purpose))).toList();
  }

  private static byte[] master(String line, Path file) throws IOException {
    try {
      byte[] master = Base64.getDecoder().decode(line);
      if (master.length >= MASTER_BYTES) {
        return master;
      }
    } catch (IllegalArgumentException e) {
      throw new IOException("A line of " + file + " is not base64.", e);
    }
    throw new IOException("A master secret in " + file + " has less than 32 bytes.");
  }

  /** Written aside and put in place whole; where another process was faster, its file stays. */
  private static void make(Path file) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    Files.createDirectories(folder);
    byte[] master = new byte[MASTER_BYTES];
    new SecureRandom().nextBytes(master);
    Path fresh = Files.createTempFile(folder, "master", ".new", ownersOnly(folder));
    try {
      Files.writeString(
          fresh, Base64.getEncoder().encodeToString(master) + "\n", StandardOpenOption.WRITE);
      Files.createLink(file, fresh);
    } catch (FileAlreadyExistsException e) {
      // Another process made it meanwhile.
    } finally {
      Files.delete(fresh);
    }
  }

  private static FileAttribute<?>[] ownersOnly(Path folder) throws IOException {
    boolean posix = Files.getFileStore(folder).supportsFileAttributeView("posix");
    return posix
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
        }
        : new FileAttribute<?>[0];
  }
}
