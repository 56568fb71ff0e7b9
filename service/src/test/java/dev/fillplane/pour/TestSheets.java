package dev.fillplane.pour;

import dev.fillplane.material.Binder;
import dev.fillplane.material.DataSheet;
import dev.fillplane.material.TemperatureRange;
import dev.fillplane.material.WaterRange;
import java.util.Optional;

/** An invented data sheet: 25 kg bags of 15 L, 3 minutes under the mixer. */
final class TestSheets {

  private TestSheets() {}

  static DataSheet usual() {
    return new DataSheet(
        Optional.empty(),
        Binder.CEMENT,
        25,
        0.005,
        new WaterRange(0.0048, 0.0052),
        0.015,
        2000,
        0.003,
        0.030,
        Optional.empty(),
        900,
        540,
        20,
        new TemperatureRange(10, 30),
        180,
        8000,
        3 * 3600,
        24 * 3600);
  }
}
