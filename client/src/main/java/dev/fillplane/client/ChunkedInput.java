package dev.fillplane.client;

import java.io.IOException;
import java.io.InputStream;

/**
 * A body in chunks (RFC 9112 section 7.1) or of a stated length. Unlike the end of a connection,
 * its end is known: what ends before is broken off.
 */
final class ChunkedInput extends InputStream {
  private static final int LONGEST = 4096;
  private static final int MOST_TRAILERS = 100;

  private final InputStream in;
  private final boolean chunked;
  private long left;
  private boolean begun;
  private boolean ended;

  /** A body in chunks. */
  ChunkedInput(InputStream in) {
    this.in = in;
    this.chunked = true;
  }

  /** A body of a length. */
  ChunkedInput(InputStream in, long length) {
    this.in = in;
    this.chunked = false;
    this.left = length;
  }

  @Override
  public int read() throws IOException {
    if (left == 0 && !ended) {
      nextChunk();
    }
    if (ended) {
      return -1;
    }
    int next = in.read();
    if (next < 0) {
      throw new IOException("The answer broke off.");
    }
    left--;
    return next;
  }

  /** At most the rest of a chunk; what is there already is not held back for more. */
  @Override
  public int read(byte[] bytes, int from, int length) throws IOException {
    if (length == 0) {
      return 0;
    }
    int first = read();
    if (first < 0) {
      return -1;
    }
    bytes[from] = (byte) first;
    return 1;
  }

  private void nextChunk() throws IOException {
    if (!chunked) {
      ended = true;
      return;
    }
    if (begun && !line().isEmpty()) {
      throw new IOException("The answer is not in chunks: one is longer than it says.");
    }
    left = size(line());
    begun = true;
    if (left == 0) {
      skipTrailers();
      ended = true;
    }
  }

  private void skipTrailers() throws IOException {
    for (int i = 0; !line().isEmpty(); i++) {
      if (i == MOST_TRAILERS) {
        throw new IOException("The answer is not HTTP: trailers without end.");
      }
    }
  }

  private static long size(String line) throws IOException {
    String digits = line.split(";", 2)[0].strip();
    if (!digits.matches("[0-9a-fA-F]{1,15}")) {
      throw new IOException("The answer is not in chunks: " + digits);
    }
    return Long.parseLong(digits, 16);
  }

  private String line() throws IOException {
    return AnswerHead.line(in, LONGEST);
  }
}
