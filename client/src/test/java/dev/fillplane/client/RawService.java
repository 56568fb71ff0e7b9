package dev.fillplane.client;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * Answers one connection after the other with bytes, however wrong, and keeps what was asked; the
 * last answer is given again to all that follow.
 */
final class RawService implements AutoCloseable {
  private final ServerSocket server;
  private final List<String> answers;
  private final List<String> heads = new CopyOnWriteArrayList<>();

  RawService(String... answers) {
    this.answers = List.of(answers);
    try {
      server = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Thread thread = new Thread(this::serve, "raw");
    thread.setDaemon(true);
    thread.start();
  }

  /** An answer with its length. */
  static String answer(String status, String headers, String body) {
    return "HTTP/1.1 %s\r\nContent-Length: %d\r\nConnection: close\r\n%s\r\n%s"
        .formatted(status, body.getBytes(UTF_8).length, headers, body);
  }

  static String busy(String retryAfter) {
    return answer("503 Busy", "Retry-After: " + retryAfter + "\r\n", "");
  }

  static String alive() {
    return ok("{\"state\": \"up\"}");
  }

  static String ok(String json) {
    return answer("200 OK", "Content-Type: application/json\r\n", json);
  }

  URI address() {
    return URI.create("http://localhost:" + server.getLocalPort());
  }

  /** How many requests came. */
  int requests() {
    return heads.size();
  }

  /** Method and path of a request, the first is 0. */
  String asked(int request) {
    return heads.get(request).lines().findFirst().orElseThrow().replace(" HTTP/1.1", "");
  }

  /** A header of a request, the first is 0. */
  Optional<String> header(int request, String name) {
    String start = name.toLowerCase(Locale.ROOT) + ":";
    return heads
        .get(request)
        .lines()
        .filter(line -> line.toLowerCase(Locale.ROOT).startsWith(start))
        .map(line -> line.substring(start.length()).strip())
        .findFirst();
  }

  private void serve() {
    while (!server.isClosed()) {
      try (Socket connection = server.accept()) {
        InputStream in = new BufferedInputStream(connection.getInputStream());
        String head = head(in);
        heads.add(head);
        in.readNBytes(length(heads.size() - 1));
        OutputStream out = connection.getOutputStream();
        out.write(answers.get(Math.min(heads.size(), answers.size()) - 1).getBytes(UTF_8));
        out.flush();
      } catch (IOException e) {
        // The client went away, or the test is over.
      }
    }
  }

  private int length(int request) {
    return header(request, "Content-Length").map(Integer::parseInt).orElse(0);
  }

  static String head(InputStream in) throws IOException {
    StringBuilder head = new StringBuilder();
    while (head.indexOf("\r\n\r\n") < 0) {
      int next = in.read();
      if (next < 0) {
        throw new IOException("no request");
      }
      head.append((char) next);
    }
    return head.toString();
  }

  @Override
  public void close() {
    try {
      server.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
