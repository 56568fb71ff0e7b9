package dev.fillplane.client;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version of this client, as the build wrote it down. */
final class ClientVersion {
  static final String VALUE = read();

  private ClientVersion() {}

  private static String read() {
    Properties properties = new Properties();
    try (InputStream in = ClientVersion.class.getResourceAsStream("client.properties")) {
      properties.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties.getProperty("version");
  }
}
