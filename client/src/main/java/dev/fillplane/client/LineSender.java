package dev.fillplane.client;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.util.Map;
import java.util.Optional;

/** Sends a request whose body is made while it is sent: a chunk a line (RFC 9112 section 7.1). */
final class LineSender {
  private final LineExchange.Lines lines;
  private final OutputStream out;

  LineSender(OutputStream out, LineExchange.Lines lines) {
    this.lines = lines;
    this.out = new BufferedOutputStream(out, 1 << 16);
  }

  void sendHead(URI address, Map<String, String> headers) throws IOException {
    send("POST " + address.getRawPath() + " HTTP/1.1\r\n");
    send("Host: " + address.getRawAuthority() + "\r\n");
    for (var header : headers.entrySet()) {
      send(header.getKey() + ": " + header.getValue() + "\r\n");
    }
    send("Content-Type: application/x-ndjson\r\n");
    send("Accept: application/x-ndjson, application/problem+json\r\n");
    send("Transfer-Encoding: chunked\r\nConnection: close\r\n\r\n");
    out.flush();
  }

  /** Sends the lines by a thread of its own. */
  void start() {
    Thread thread = new Thread(this::run, "fillplane-stream");
    thread.setDaemon(true);
    thread.start();
  }

  private void run() {
    try {
      for (Optional<byte[]> line = lines.next(); line.isPresent(); line = lines.next()) {
        sendChunk(line.get());
      }
      send("0\r\n\r\n");
      out.flush();
    } catch (IOException e) {
      // The end that reads finds out, perhaps from an answer that is on its way.
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void sendChunk(byte[] line) throws IOException {
    send(Integer.toHexString(line.length + 1) + "\r\n");
    out.write(line);
    send("\n\r\n");
    out.flush();
  }

  private void send(String text) throws IOException {
    out.write(text.getBytes(US_ASCII));
  }
}
