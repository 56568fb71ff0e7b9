package dev.fillplane.client;

import java.io.Closeable;
import java.io.IOException;
import java.net.Socket;

/**
 * A connection, with TLS where it has that.
 *
 * @param socket what is read and written
 * @param plain what lies beneath it; the same without TLS
 */
record Connection(Socket socket, Socket plain) implements Closeable {

  /**
   * Cuts it. What lies beneath goes first: TLS would like to say good-bye, and wait for that behind
   * a thread that writes to a service which reads no more.
   */
  @Override
  public void close() throws IOException {
    plain.close();
    socket.close();
  }
}
