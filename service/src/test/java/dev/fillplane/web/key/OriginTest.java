package dev.fillplane.web.key;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OriginTest {

  @ParameterizedTest
  @CsvSource({
    "https://shop.example, https://shop.example",
    "HTTPS://Shop.Example, https://shop.example",
    "https://shop.example:443, https://shop.example",
    "http://shop.example:80, http://shop.example",
    "http://shop.example:443, http://shop.example:443",
    "http://localhost:3000, http://localhost:3000",
    "http://[::1]:3000, http://[::1]:3000",
  })
  void isWrittenAsBrowsersDo(String told, String origin) {
    assertEquals(origin, Origin.of(told));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "*",
        "null",
        "",
        "shop.example",
        "https://",
        "https://shop.example/",
        "https://shop.example/bags",
        "https://shop.example?x",
        "https://me@shop.example",
        "https://*.shop.example",
        "file:///bags.html",
        "https://two words"
      })
  void othersAreNone(String told) {
    assertThrows(IllegalArgumentException.class, () -> Origin.of(told));
  }
}
