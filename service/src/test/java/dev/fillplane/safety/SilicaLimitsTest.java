package dev.fillplane.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Limits of respirable crystalline silica: 29 CFR 1926.1153, Directive (EU) 2017/2398 and HSE EH40
 * from secondary pages; NIOSH from its manual of analytical methods; ACGIH from memory.
 */
class SilicaLimitsTest {

  @Test
  void ofEachJurisdiction() {
    assertEquals(
        List.of(
            "US LIMIT 50 ug/m3 in 8 h",
            "US ACTION_LEVEL 25 ug/m3 in 8 h",
            "US RECOMMENDED 50 ug/m3 in 10 h",
            "US RECOMMENDED 25 ug/m3 in 8 h",
            "EU LIMIT 100 ug/m3 in 8 h",
            "UK LIMIT 100 ug/m3 in 8 h"),
        SilicaLimits.of(Optional.empty()).stream().map(SilicaLimitsTest::text).toList());
  }

  private static String text(ExposureLimit limit) {
    long micrograms = Math.round(limit.concentration() * 1e9);
    return String.join(
        " ",
        limit.jurisdiction().toString(),
        limit.kind().toString(),
        Long.toString(micrograms),
        "ug/m3 in",
        Long.toString(Math.round(limit.hours())),
        "h");
  }
}
