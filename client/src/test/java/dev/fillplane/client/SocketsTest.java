package dev.fillplane.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SocketsTest {
  private final Sockets sockets =
      new Sockets(Duration.ofSeconds(5), Duration.ofSeconds(5), Optional.empty());

  /** Where a name has several addresses, one that does not answer is no hindrance. */
  @Test
  void triesEveryAddressOfAName() throws IOException {
    InetAddress deaf = InetAddress.getByAddress(new byte[] {127, 0, 0, 2});
    InetAddress here = InetAddress.getByAddress(new byte[] {127, 0, 0, 1});
    try (ServerSocket server = new ServerSocket(0, 1, here);
        Connection connection = sockets.connect(at(server.getLocalPort()), deaf, here)) {
      assertEquals(here, connection.socket().getInetAddress());
    }
  }

  @Test
  void tellsOfTheFirstWhereNoneAnswers() throws IOException {
    int free;
    try (ServerSocket server = new ServerSocket(0)) {
      free = server.getLocalPort();
    }
    assertThrows(ConnectException.class, () -> sockets.connect(at(free)));
  }

  private static URI at(int port) {
    return URI.create("http://localhost:" + port);
  }
}
