package dev.fillplane.client;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import javax.net.ServerSocketFactory;

/**
 * Serves one connection after the other as a script says; the last script serves all that follow.
 */
public final class StreamingService implements AutoCloseable {

  /** What is done on one connection. */
  public interface Script {
    void run(Connection connection) throws IOException;
  }

  private final ServerSocket server;
  private final List<Script> scripts;
  private final List<String> heads = new CopyOnWriteArrayList<>();
  private final CountDownLatch left = new CountDownLatch(1);

  /** Serves on any free port. */
  public StreamingService(Script... scripts) {
    this(ServerSocketFactory.getDefault(), scripts);
  }

  StreamingService(ServerSocketFactory sockets, Script... scripts) {
    this.scripts = List.of(scripts);
    try {
      server = sockets.createServerSocket(0, 50, InetAddress.getLoopbackAddress());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Thread thread = new Thread(this::serve, "streaming");
    thread.setDaemon(true);
    thread.start();
  }

  /** Where it listens. */
  public URI address() {
    return URI.create("http://localhost:" + server.getLocalPort());
  }

  /** The heads of the requests so far. */
  List<String> heads() {
    return List.copyOf(heads);
  }

  /** Waits until a client has gone away before its stream was over. */
  void awaitThatTheClientLeft() throws InterruptedException {
    left.await();
  }

  /** Answers each request with a plan of its reference. */
  public static void answerAll(Connection connection) throws IOException {
    connection.begin();
    connection.answer(Integer.MAX_VALUE);
    connection.end();
  }

  private void serve() {
    for (int i = 0; !server.isClosed(); i++) {
      try (Socket socket = server.accept()) {
        Connection connection = new Connection(socket);
        heads.add(connection.head);
        scripts.get(Math.min(i, scripts.size() - 1)).run(connection);
      } catch (IOException e) {
        left.countDown();
      }
    }
  }

  @Override
  public void close() {
    try {
      server.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The service's end of a connection. */
  public static final class Connection {
    final String head;
    private final Socket socket;
    private final InputStream in;

    Connection(Socket socket) throws IOException {
      this.socket = socket;
      this.in = new BufferedInputStream(socket.getInputStream());
      this.head = RawService.head(in);
    }

    /** The next request; empty after the last. */
    public Optional<String> next() throws IOException {
      int length = Integer.parseInt(textLine(), 16);
      String chunk = new String(in.readNBytes(length), UTF_8);
      textLine();
      return length == 0 ? Optional.empty() : Optional.of(chunk);
    }

    /** The reference of the next request. */
    Optional<String> nextReference() throws IOException {
      return next().map(line -> line.replaceAll("(?s).*\"reference\":\"([^\"]*)\".*", "$1"));
    }

    /** Begins an answer in chunks. */
    public void begin() throws IOException {
      raw("HTTP/1.1 200 OK\r\nTransfer-Encoding: chunked\r\n\r\n");
    }

    /** Answers the next requests, as many as there are or are told. */
    public void answer(int most) throws IOException {
      for (int i = 0; i < most; i++) {
        Optional<String> reference = nextReference();
        if (reference.isEmpty()) {
          return;
        }
        line("{\"units\":\"metric\",\"reference\":\"" + reference.get() + "\"}");
      }
    }

    /** Sends a line of the answer. */
    public void line(String json) throws IOException {
      raw(Integer.toHexString(json.getBytes(UTF_8).length + 1) + "\r\n" + json + "\n\r\n");
    }

    /** Ends the answer. */
    public void end() throws IOException {
      raw("0\r\n\r\n");
    }

    /** Sends bytes, however wrong. */
    public void raw(String text) throws IOException {
      socket.getOutputStream().write(text.getBytes(UTF_8));
      socket.getOutputStream().flush();
    }

    /** Reads until the client is gone. */
    public void readOn() throws IOException {
      while (next().isPresent()) {
        // Takes all that comes.
      }
    }

    private String textLine() throws IOException {
      StringBuilder line = new StringBuilder();
      for (int next = in.read(); next != '\n'; next = in.read()) {
        if (next < 0) {
          throw new IOException("The client is gone.");
        }
        line.append((char) next);
      }
      return line.toString().strip();
    }
  }
}
