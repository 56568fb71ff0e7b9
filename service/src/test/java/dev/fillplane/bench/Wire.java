package dev.fillplane.bench;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * One connection to the service on this machine, kept open from request to request; it reads
 * answers and throws them away, so that a caller costs next to nothing beside the service.
 */
final class Wire implements AutoCloseable {

  private static final String LENGTH = "content-length:";
  private static final String CHUNKED = "transfer-encoding: chunked";

  private final Socket socket;
  private final InputStream in;
  private final OutputStream out;
  private final byte[] line = new byte[8_192];
  private final byte[] skipped = new byte[65_536];

  Wire(int port) throws IOException {
    socket = new Socket(InetAddress.getLoopbackAddress(), port);
    socket.setTcpNoDelay(true);
    in = new BufferedInputStream(socket.getInputStream(), 65_536);
    out = socket.getOutputStream();
  }

  /** A whole request, to be sent as often as wanted. */
  static byte[] post(String path, byte[] body) {
    String head =
        "POST %s HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: %d\r\n\r\n"
            .formatted(path, body.length);
    ByteArrayOutputStream request = new ByteArrayOutputStream();
    request.writeBytes(head.getBytes(StandardCharsets.US_ASCII));
    request.writeBytes(body);
    return request.toByteArray();
  }

  /** A request for what stands at a path. */
  static byte[] get(String path) {
    return "GET %s HTTP/1.1\r\nHost: localhost\r\n\r\n"
        .formatted(path)
        .getBytes(StandardCharsets.US_ASCII);
  }

  /** Sends a request, reads the whole answer and tells its status. */
  Answer send(byte[] request) throws IOException {
    out.write(request);
    int status = Integer.parseInt(line().substring(9, 12));
    long length = -1;
    boolean chunked = false;
    for (String header = line(); !header.isEmpty(); header = line()) {
      String lower = header.toLowerCase(Locale.ROOT);
      if (lower.startsWith(LENGTH)) {
        length = Long.parseLong(lower.substring(LENGTH.length()).trim());
      }
      chunked |= lower.equals(CHUNKED);
    }
    if (!chunked && length < 0) {
      throw new IOException("an answer of unknown length");
    }
    return new Answer(status, chunked ? skipChunks() : skip(length));
  }

  private long skipChunks() throws IOException {
    long all = 0;
    while (true) {
      long length = Long.parseLong(line(), 16);
      all += skip(length);
      line();
      if (length == 0) {
        return all;
      }
    }
  }

  private long skip(long length) throws IOException {
    for (long left = length; left > 0; ) {
      int read = in.read(skipped, 0, (int) Math.min(left, skipped.length));
      if (read < 0) {
        throw new EOFException("the answer breaks off");
      }
      left -= read;
    }
    return length;
  }

  private String line() throws IOException {
    int length = 0;
    for (int next = in.read(); next != '\n'; next = in.read()) {
      if (next < 0) {
        throw new EOFException("the connection was closed");
      }
      line[length++] = (byte) next;
    }
    return new String(line, 0, Math.max(0, length - 1), StandardCharsets.ISO_8859_1);
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }

  /** Status and length of the body of an answer. */
  record Answer(int status, long bytes) {}
}
