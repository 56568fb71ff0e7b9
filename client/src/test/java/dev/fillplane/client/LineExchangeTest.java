package dev.fillplane.client;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StreamCorruptedException;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LineExchangeTest {

  @Test
  void aLineWithoutEndIsNotKept() throws IOException {
    assertArrayEquals("12345".getBytes(UTF_8), LineExchange.line(in("12345\n"), 5).orElseThrow());
    InputStream endless = in("123456\n");
    assertThrows(StreamCorruptedException.class, () -> LineExchange.line(endless, 5));
    assertEquals(Optional.empty(), LineExchange.line(in("half"), 5), "half a line is none");
  }

  private static InputStream in(String text) {
    return new ByteArrayInputStream(text.getBytes(UTF_8));
  }
}
