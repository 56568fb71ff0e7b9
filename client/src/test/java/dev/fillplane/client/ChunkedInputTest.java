package dev.fillplane.client;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChunkedInputTest {

  @Test
  void readsChunksPastExtensionsAndTrailers() throws IOException {
    assertEquals(
        "hello, you", chunked("5;a=b\r\nhello\r\n0005\r\n, you\r\n0\r\nDigest: x\r\n\r\n"));
    assertEquals("", chunked("0\r\n\r\n"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "5\r\nhell",
        "5\r\nhello",
        "5\r\nhello\r\n",
        "5\r\nhello\r\n0\r\n",
        "4\r\nhello\r\n0\r\n\r\n",
        "x\r\n",
        "-1\r\n",
        "fffffffffffffffff\r\n"
      })
  void tellsWhatIsCutOrNoChunk(String bytes) {
    assertThrows(IOException.class, () -> chunked(bytes));
  }

  @Test
  void endsTrailersWithoutEnd() {
    assertThrows(IOException.class, () -> chunked("0\r\n" + "a: b\r\n".repeat(1000) + "\r\n"));
    assertThrows(IOException.class, () -> chunked("1".repeat(100_000)));
  }

  @Test
  void readsALength() throws IOException {
    assertEquals("hel", text(new ChunkedInput(bytes("hello"), 3)));
    assertThrows(IOException.class, () -> text(new ChunkedInput(bytes("he"), 3)));
  }

  private static String chunked(String bytes) throws IOException {
    return text(new ChunkedInput(bytes(bytes)));
  }

  private static ByteArrayInputStream bytes(String text) {
    return new ByteArrayInputStream(text.getBytes(US_ASCII));
  }

  private static String text(ChunkedInput input) throws IOException {
    return new String(input.readAllBytes(), US_ASCII);
  }
}
