package dev.fillplane.web;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPInputStream;

/** A stream of lines from the caller's side: sends and reads as it likes, unlike proper clients. */
final class StreamCall implements AutoCloseable {

  private static final int PATIENCE_MILLIS = 60_000;

  private final Socket socket;
  private Optional<InputStream> body = Optional.empty();
  private String head = "";

  StreamCall(int port, String... headers) throws IOException {
    socket = new Socket("127.0.0.1", port);
    socket.setSoTimeout(PATIENCE_MILLIS);
    socket.setTcpNoDelay(true);
    write(
        "POST /v1/plan-streams HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/x-ndjson\r\n"
            + "Transfer-Encoding: chunked\r\n"
            + String.join("", List.of(headers).stream().map(line -> line + "\r\n").toList())
            + "\r\n");
  }

  /** Sends a piece of the body. */
  StreamCall send(String text) throws IOException {
    return send(text.getBytes(StandardCharsets.UTF_8));
  }

  StreamCall send(byte[] text) throws IOException {
    write(Integer.toHexString(text.length) + "\r\n");
    socket.getOutputStream().write(text);
    write("\r\n");
    return this;
  }

  /** Ends the body. */
  StreamCall end() throws IOException {
    write("0\r\n\r\n");
    return this;
  }

  /** Sends nothing more though the body is not over. */
  StreamCall breakOff() throws IOException {
    socket.shutdownOutput();
    return this;
  }

  /** Goes away without a word. */
  @Override
  public void close() throws IOException {
    socket.setSoLinger(true, 0);
    socket.close();
  }

  /** Status line and headers of the answer. */
  String head() throws IOException {
    body();
    return head;
  }

  /** The next line of the answer; empty at its end. */
  Optional<String> line() throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    InputStream in = body();
    for (int next = in.read(); next >= 0; next = in.read()) {
      if (next == '\n') {
        return Optional.of(line.toString(StandardCharsets.UTF_8));
      }
      line.write(next);
    }
    return line.size() == 0 ? Optional.empty() : Optional.of(line.toString(StandardCharsets.UTF_8));
  }

  /** All lines that are still to come. */
  List<String> lines() throws IOException {
    List<String> lines = new ArrayList<>();
    for (Optional<String> next = line(); next.isPresent(); next = line()) {
      lines.add(next.get());
    }
    return lines;
  }

  private InputStream body() throws IOException {
    if (body.isEmpty()) {
      InputStream in = new BufferedInputStream(socket.getInputStream());
      StringBuilder told = new StringBuilder();
      for (String line = headLine(in); !line.isEmpty(); line = headLine(in)) {
        told.append(line).append('\n');
      }
      head = told.toString();
      InputStream whole = head.contains("chunked") ? new Chunks(in) : sized(in);
      body = Optional.of(head.contains("gzip") ? new GZIPInputStream(whole, 1) : whole);
    }
    return body.get();
  }

  private InputStream sized(InputStream in) throws IOException {
    if (!head.contains("Content-Length: ")) {
      return in;
    }
    String size = head.replaceAll("(?s).*Content-Length: (\\d+).*", "$1");
    return new ByteArrayInputStream(in.readNBytes(Integer.parseInt(size)));
  }

  private void write(String text) throws IOException {
    socket.getOutputStream().write(text.getBytes(StandardCharsets.UTF_8));
  }

  private static String headLine(InputStream in) throws IOException {
    StringBuilder line = new StringBuilder();
    for (int next = in.read(); next != '\n'; next = in.read()) {
      if (next < 0) {
        throw new EOFException("the answer ends in its head: " + line);
      }
      line.append((char) next);
    }
    return line.toString().strip();
  }

  /** A body in chunks. */
  private static final class Chunks extends InputStream {

    private final InputStream in;
    private int left;
    private boolean over;

    Chunks(InputStream in) {
      this.in = in;
    }

    @Override
    public int read() throws IOException {
      if (left == 0 && !over) {
        String size = headLine(in);
        left = Integer.parseInt(size.isEmpty() ? headLine(in) : size, 16);
        over = left == 0;
      }
      if (over) {
        return -1;
      }
      left--;
      int next = in.read();
      if (next < 0) {
        throw new EOFException("the answer breaks off");
      }
      return next;
    }

    @Override
    public int read(byte[] to, int from, int length) throws IOException {
      int next = read();
      if (next < 0) {
        return -1;
      }
      to[from] = (byte) next;
      return 1;
    }
  }
}
