package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.UnitSystem;
import java.util.Optional;

/** Heavy work in hot air; by the heat index where the humidity is told. */
final class HeatStress implements Rule {

  private static final double HOT = 30;
  private static final double MODERATE = fahrenheit(91);
  private static final double HIGH = fahrenheit(103);

  private static final String BASIS = "common practice, no source; local rules for heat decide";

  private static final String INDEX_BASIS =
      "heat index of the US National Weather Service; moderate risk from 91 F, high from 103 F (OSHA"
          + " guidance, from memory). In the sun it is up to 15 F more. Local rules for heat decide";

  @Override
  public Optional<Note> note(SafetyInput job) {
    double air = job.conditions().air();
    if (job.conditions().humidity().isPresent()) {
      double index = HeatIndex.of(air, job.conditions().humidity().getAsDouble());
      if (index >= MODERATE) {
        return Optional.of(humid(index));
      }
    }
    if (air < HOT) {
      return Optional.empty();
    }
    return Optional.of(
        Note.of("heat-stress", Severity.WARNING, BASIS)
            .valued(Amount.of(air, Dimension.TEMPERATURE))
            .limited(Amount.of(HOT, Dimension.TEMPERATURE)));
  }

  private static Note humid(double index) {
    Severity severity = index >= HIGH ? Severity.DANGER : Severity.WARNING;
    return Note.of("heat-stress-humid", severity, INDEX_BASIS)
        .valued(Amount.of(index, Dimension.TEMPERATURE))
        .limited(Amount.of(MODERATE, Dimension.TEMPERATURE));
  }

  private static double fahrenheit(double degrees) {
    return Dimension.TEMPERATURE.unit(UnitSystem.US).toSi(degrees);
  }
}
