package dev.fillplane.client;

import static java.nio.charset.StandardCharsets.UTF_8;

import dev.fillplane.client.generated.ApiException;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * One request over HTTP/1.1 whose lines are sent by a thread of its own while those of the answer
 * are read.
 *
 * <p>{@code java.net.http} reads no answer before the request is sent in full, so two ends that
 * hold each other back would wait for ever; hence a plain socket. No proxies.
 */
final class LineExchange implements AutoCloseable {
  private static final int LONGEST_PROBLEM = 1_000_000;

  /** The lines to send. */
  interface Lines {
    /** The next line; empty at the end. */
    Optional<byte[]> next() throws InterruptedException;

    /** Whether an answer is due; while none is, silence is no fault. */
    boolean owed();
  }

  private final Socket socket;
  private final InputStream in;
  private Optional<InputStream> body = Optional.empty();

  private LineExchange(Socket socket, Lines lines) throws IOException {
    this.socket = socket;
    this.in = new BufferedInputStream(new PatientInput(socket.getInputStream(), lines::owed));
  }

  /** Connects, sends the head of the request and begins to send its lines. */
  static LineExchange open(Sockets sockets, URI address, Map<String, String> headers, Lines lines)
      throws IOException {
    Socket socket = sockets.connect(address);
    LineExchange exchange = new LineExchange(socket, lines);
    LineSender sender = new LineSender(socket, lines);
    sender.sendHead(address, headers);
    sender.start();
    return exchange;
  }

  /**
   * The next line of the answer, or empty at its end; blank lines are passed over, and half a line
   * at the end is none.
   *
   * @throws ProblemException if the service refuses the exchange
   */
  Optional<byte[]> nextLine(Instant now) throws IOException {
    if (body.isEmpty()) {
      AnswerHead head = AnswerHead.read(in);
      body = Optional.of(head.body(in));
      if (head.status() != 200) {
        throw refusal(head, now);
      }
    }
    return line(body.get());
  }

  @Override
  public void close() {
    try {
      socket.close();
    } catch (IOException e) {
      // Nothing is lost: what was owed is asked for again.
    }
  }

  private static Optional<byte[]> line(InputStream body) throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (int next = body.read(); next >= 0; next = body.read()) {
      if (next != '\n') {
        line.write(next);
      } else if (line.toString(UTF_8).isBlank()) {
        line.reset();
      } else {
        return Optional.of(line.toByteArray());
      }
    }
    return Optional.empty();
  }

  private RuntimeException refusal(AnswerHead head, Instant now) throws IOException {
    String text = new String(body.orElseThrow().readNBytes(LONGEST_PROBLEM), UTF_8);
    return Failures.of(new ApiException(head.status(), head.headers(), text), now);
  }
}
