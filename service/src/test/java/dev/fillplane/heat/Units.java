package dev.fillplane.heat;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.util.Locale;

/** Values of a check table in its own units. */
record Units(UnitSystem system) {

  static Units of(String name) {
    return new Units(UnitSystem.valueOf(name.toUpperCase(Locale.ROOT)));
  }

  Portion portion(double mass, double temperature) {
    return new Portion(mass(mass), temperature(temperature));
  }

  double mass(double value) {
    return Dimension.MASS.unit(system).toSi(value);
  }

  double temperature(double value) {
    return Dimension.TEMPERATURE.unit(system).toSi(value);
  }

  double written(double temperature) {
    return Dimension.TEMPERATURE.unit(system).fromSi(temperature);
  }
}
