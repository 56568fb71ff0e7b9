package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Texts to lines, told as {@code number:text}, with {@code !} for one that is too long. */
class LineReaderTest {

  private static final int MOST = 8;

  @Test
  void lines() throws IOException {
    assertEquals(List.of("1:a", "2:b"), read("a\nb\n"));
    assertEquals(List.of("1:a", "2:b"), read("a\nb"), "the last line may end with the text");
    assertEquals(List.of("1:a", "2:b"), read("a\r\nb\r\n"));
    assertEquals(List.of("1:a\rb"), read("a\rb"), "a return alone ends nothing");
    assertEquals(List.of(), read(""));
  }

  @Test
  void blankLinesAreSkippedButCounted() throws IOException {
    assertEquals(List.of("3:a", "5:b"), read("\n \t\na\n\r\nb\n\n\n"));
    assertEquals(List.of(), read("\n\r\n  "));
  }

  @Test
  void longLines() throws IOException {
    assertEquals(List.of("1:12345678"), read("12345678\n"));
    assertEquals(List.of("1:!", "2:a"), read("123456789\na\n"));
    assertEquals(List.of("1:!"), read("123456789"));
    assertEquals(List.of("1:!"), read(" ".repeat(9)), "nobody looks whether it is blank");
  }

  @Test
  void endsOfLinesAtTheEdgesOfBlocks() throws IOException {
    for (int length = 65_530; length < 65_545; length++) {
      String text = "x".repeat(length) + "\r\nab\n\ncd";
      LineReader reader = new LineReader(slow(text), 70_000);
      assertEquals(length, reader.next().orElseThrow().text().length);
      assertArrayEquals(bytes("ab"), reader.next().orElseThrow().text());
      LineReader.Line last = reader.next().orElseThrow();
      assertEquals(4, last.number());
      assertArrayEquals(bytes("cd"), last.text());
      assertTrue(reader.next().isEmpty());
    }
  }

  @Test
  void aLineThatBreaksOffHasItsNumber() throws IOException {
    LineReader reader =
        new LineReader(
            new InputStream() {
              private final InputStream begun = new ByteArrayInputStream(bytes("a\nb"));

              @Override
              public int read() throws IOException {
                int next = begun.read();
                if (next < 0) {
                  throw new IOException("a test");
                }
                return next;
              }

              @Override
              public int read(byte[] to, int from, int length) throws IOException {
                to[from] = (byte) read();
                return 1;
              }
            },
            MOST);
    assertEquals(1, reader.next().orElseThrow().number());
    assertThrows(IOException.class, reader::next);
    assertEquals(2, reader.number());
  }

  private static List<String> read(String text) throws IOException {
    LineReader reader = new LineReader(slow(text), MOST);
    List<String> lines = new ArrayList<>();
    for (Optional<LineReader.Line> next = reader.next(); next.isPresent(); next = reader.next()) {
      LineReader.Line line = next.get();
      String told = line.tooLong() ? "!" : new String(line.text(), StandardCharsets.UTF_8);
      lines.add(line.number() + ":" + told);
    }
    return lines;
  }

  /** Gives the text in pieces of at most three bytes at its beginning, then as it is asked. */
  private static InputStream slow(String text) {
    return new ByteArrayInputStream(bytes(text)) {
      @Override
      public synchronized int read(byte[] to, int from, int length) {
        return super.read(to, from, pos < 12 ? Math.min(3, length) : length);
      }
    };
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
