package dev.fillplane.fuzz;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.UncheckedIOException;
import java.util.Random;

/** Trees as texts, in ASCII so that characters which are none can be told too, and spoilt texts. */
final class Texts {

  private static final JsonMapper ASCII =
      JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

  private Texts() {}

  static String of(JsonNode tree) {
    try {
      return ASCII.writeValueAsString(tree);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A text with a piece cut out, doubled, or put in. */
  static String spoilt(String text, Random random) {
    int at = random.nextInt(text.length() + 1);
    int to = Math.min(text.length(), at + random.nextInt(20));
    String piece = text.substring(at, to);
    String instead =
        switch (random.nextInt(6)) {
          case 0 -> piece + piece;
          case 1 -> Chance.of(random, "NaN", "1e999", "01", "+1", ".5", "'", "\"", ",", "\\u12");
          case 2 -> Chance.of(HostileTexts.ALL, random);
          case 3 -> Chance.of(random, "[".repeat(2_000), "{\"a\":".repeat(300), "\uFEFF", "\u0000");
          case 4 -> "/* no comment */";
          default -> "";
        };
    return text.substring(0, at) + instead + text.substring(Chance.of(random, at, to));
  }
}
