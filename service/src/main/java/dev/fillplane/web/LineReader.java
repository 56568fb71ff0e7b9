package dev.fillplane.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Optional;

/**
 * Reads a text line by line and holds no more of it than one line of the largest size. Lines end
 * with a line feed, or a carriage return and one; the last may end with the text. Not safe to
 * share.
 */
final class LineReader {

  private static final int BLOCK_BYTES = 65_536;

  private final InputStream in;
  private final int mostBytes;
  private final byte[] block = new byte[BLOCK_BYTES];
  private int next;
  private int end;
  private int number;

  /** Lines of {@code in}; of those with over {@code mostBytes} only the number is kept. */
  LineReader(InputStream in, int mostBytes) {
    this.in = in;
    this.mostBytes = mostBytes;
  }

  /**
   * A line that is not blank.
   *
   * @param number counted from 1, blank lines too
   * @param text without its end; empty if it is too long
   */
  record Line(int number, byte[] text, boolean tooLong) {

    private boolean blank() {
      for (byte sign : text) {
        if (sign != ' ' && sign != '\t' && sign != '\r') {
          return false;
        }
      }
      return !tooLong;
    }
  }

  /** The number of the line that was read last, or that is being read. */
  int number() {
    return number;
  }

  /** The next line that is not blank; empty at the end of the text. */
  Optional<Line> next() throws IOException {
    number++;
    while (fill()) {
      Line line = line();
      if (!line.blank()) {
        return Optional.of(line);
      }
      number++;
    }
    return Optional.empty();
  }

  private Line line() throws IOException {
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    boolean tooLong = false;
    boolean ended = false;
    while (!ended && fill()) {
      int from = next;
      while (next < end && block[next] != '\n') {
        next++;
      }
      tooLong |= text.size() + (next - from) > mostBytes;
      if (tooLong) {
        text = new ByteArrayOutputStream();
      } else {
        text.write(block, from, next - from);
      }
      ended = next < end;
      next += ended ? 1 : 0;
    }
    return new Line(number, withoutReturn(text.toByteArray()), tooLong);
  }

  private static byte[] withoutReturn(byte[] text) {
    boolean returns = text.length > 0 && text[text.length - 1] == '\r';
    return returns ? Arrays.copyOf(text, text.length - 1) : text;
  }

  /** Whether there is something left in the block, read anew where there is not. */
  private boolean fill() throws IOException {
    if (next == end) {
      next = 0;
      end = Math.max(0, in.read(block));
    }
    return next < end;
  }
}
