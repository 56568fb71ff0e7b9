package dev.fillplane.web.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers written digit by digit against exact decimals. */
class PlainNumberTest {

  @ParameterizedTest
  @CsvSource({
    "12.34, 12.34",
    "-0.5, -0.5",
    "0.001, 0.001",
    "0.0010000000000049, 0.001",
    "1.234567890123456, 1.23456789012",
    "9999999.5, 9999999.5",
    "100.01, 100.01"
  })
  void digitByDigit(double value, String text) throws IOException {
    assertEquals(text, written(value));
  }

  /** Whole numbers, what rounds to them, and what wants an exponent are for others to write. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 7, -3, 1e7, 12345678.5, 9.9999999999999, 0.000999, 1e-12, 1e300})
  void leftToOthers(double value) throws IOException {
    try (JsonGenerator out = new JsonFactory().createGenerator(new StringWriter())) {
      assertFalse(PlainNumber.write(value, out));
    }
  }

  @Test
  void anyOfUsualSize() throws IOException {
    MathContext digits = new MathContext(12, RoundingMode.HALF_EVEN);
    Random random = new Random(1);
    for (int i = 0; i < 100_000; i++) {
      double value = (0.1 + random.nextDouble()) * Math.pow(10, random.nextInt(9) - 2);
      value = random.nextBoolean() ? Math.rint(value * 100) / 100 + 0.005 : -value;
      assertEquals(
          new BigDecimal(value).round(digits).stripTrailingZeros().toPlainString(), written(value));
    }
  }

  /** A few are too near the middle between two numbers, and left to exact decimals. */
  private static String written(double value) throws IOException {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
      QuantityWriter.writeNumber(value, out);
    }
    return text.toString();
  }
}
