package dev.fillplane.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A connection on which anything can be sent, and as slowly as one likes. */
final class RawCall implements AutoCloseable {

  private static final int PATIENCE_MILLIS = 30_000;

  private final Socket socket = new Socket();

  RawCall(int port) throws IOException {
    this(port, 0);
  }

  /** With room for {@code receive} bytes that have come and are not read; 0 for the usual. */
  RawCall(int port, int receive) throws IOException {
    if (receive > 0) {
      socket.setReceiveBufferSize(receive);
    }
    socket.setTcpNoDelay(true);
    socket.setSoTimeout(PATIENCE_MILLIS);
    socket.connect(new InetSocketAddress("127.0.0.1", port));
  }

  static RawCall toTheService() throws IOException {
    return new RawCall(RunningService.uri().getPort());
  }

  /** A request with a JSON body of an announced length. */
  static String post(String path, int length) {
    return "POST "
        + path
        + " HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/json\r\nContent-Length: "
        + length
        + "\r\n\r\n";
  }

  RawCall send(String text) throws IOException {
    socket.getOutputStream().write(text.getBytes(StandardCharsets.ISO_8859_1));
    return this;
  }

  /** Sends nothing more, but may still read. */
  RawCall halfClose() throws IOException {
    socket.shutdownOutput();
    return this;
  }

  /** Goes away so that the other side hears of it at once. */
  void vanish() throws IOException {
    socket.setSoLinger(true, 0);
    socket.close();
  }

  /** The head of the next answer and as much body as it announces. */
  String answer() throws IOException {
    InputStream in = socket.getInputStream();
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    while (!head.toString(StandardCharsets.ISO_8859_1).endsWith("\r\n\r\n")) {
      int next = in.read();
      if (next < 0) {
        return head.toString(StandardCharsets.ISO_8859_1);
      }
      head.write(next);
    }
    String text = head.toString(StandardCharsets.ISO_8859_1);
    return text + new String(in.readNBytes(length(text)), StandardCharsets.UTF_8);
  }

  /** The statuses of the next answers. */
  List<Integer> statuses(int count) throws IOException {
    List<Integer> statuses = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      statuses.add(status(answer()));
    }
    return statuses;
  }

  /** The status of an answer; 0 if there is none. */
  static int status(String answer) {
    return answer.startsWith("HTTP/1.1 ") ? Integer.parseInt(answer.substring(9, 12)) : 0;
  }

  /** Whether the other side has closed; waits for it. */
  boolean closed() throws IOException {
    try {
      while (socket.getInputStream().read() >= 0) {
        // what was on its way
      }
      return true;
    } catch (SocketException e) {
      return true;
    }
  }

  /** Whether the other side closes before its answer is whole. */
  boolean cutOff() throws IOException {
    try {
      String head = "";
      while (!head.endsWith("\r\n\r\n")) {
        head += (char) socket.getInputStream().read();
      }
      int length = length(head);
      return socket.getInputStream().readNBytes(length).length < length;
    } catch (SocketException e) {
      return true;
    }
  }

  private static int length(String head) {
    return head.lines()
        .filter(line -> line.toLowerCase(Locale.ROOT).startsWith("content-length:"))
        .mapToInt(line -> Integer.parseInt(line.substring(15).trim()))
        .findFirst()
        .orElse(0);
  }

  @Override
  public void close() throws IOException {
    socket.close();
  }
}
