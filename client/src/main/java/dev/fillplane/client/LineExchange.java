package dev.fillplane.client;

import static java.nio.charset.StandardCharsets.UTF_8;

import dev.fillplane.client.generated.ApiException;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StreamCorruptedException;
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

  /** Far more than a plan; a line that goes on is none, and would fill the memory. */
  private static final int LONGEST_LINE = 256_000_000;

  /** The lines to send. */
  interface Lines {
    /** The next line; empty at the end. */
    Optional<byte[]> next() throws InterruptedException;

    /** Whether an answer is due; while none is, silence is no fault. */
    boolean owed();
  }

  private final Connection connection;
  private final InputStream in;
  private Optional<InputStream> body = Optional.empty();

  private LineExchange(Connection connection, Lines lines) throws IOException {
    this.connection = connection;
    InputStream bytes = connection.socket().getInputStream();
    this.in = new BufferedInputStream(new PatientInput(bytes, lines::owed));
  }

  /** Connects, sends the head of the request and begins to send its lines. */
  static LineExchange open(Sockets sockets, URI address, Map<String, String> headers, Lines lines)
      throws IOException {
    Connection connection = sockets.connect(address);
    try {
      LineExchange exchange = new LineExchange(connection, lines);
      LineSender sender = new LineSender(connection.socket().getOutputStream(), lines);
      sender.sendHead(address, headers);
      sender.start();
      return exchange;
    } catch (IOException e) {
      connection.close();
      throw e;
    }
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
    return line(body.get(), LONGEST_LINE);
  }

  @Override
  public void close() {
    try {
      connection.close();
    } catch (IOException e) {
      // Nothing is lost: what was owed is asked for again.
    }
  }

  /** The next line of at most so many bytes. */
  static Optional<byte[]> line(InputStream body, int longest) throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (int next = body.read(); next >= 0; next = body.read()) {
      if (line.size() > longest) {
        throw new StreamCorruptedException("The answer is a line without end.");
      }
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
