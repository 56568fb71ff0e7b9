package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.Optional;

/**
 * Noise of mixers and grinders for whoever stays beside them all the time that they run. Levels of
 * tools are common practice, no source.
 */
final class Noise implements Rule {

  private static final int MIXER = 92;
  private static final int PUMP = 88;
  private static final int GRINDER = 100;

  /** Level of a day from which ear protection is offered in the EU and the UK. */
  private static final double LOWER_ACTION = 80;

  /** From here on it is worn there. */
  private static final int UPPER_ACTION = 85;

  private static final String BASIS =
      "29 CFR 1926.52 table D-2 and T = 8 / 2^((L - 90) / 5) h (US dose); action levels of a day of 80"
          + " and 85 dBA, limit 87, in the EU and the UK, 85 dBA recommended by NIOSH (from memory);"
          + " 92 dBA of a mixer, 88 of a pump, 100 of a grinder: common practice, no source, see the"
          + " manual of the tool";

  @Override
  public Optional<Note> note(SafetyInput job) {
    double mixing = job.mixes() ? (job.mixesInBarrels() ? job.mixingTime() : job.pourTime()) : 0;
    double grinding = 3600 * job.grindHours();
    int mixer = job.mixesInBarrels() ? MIXER : PUMP;
    NoiseDose noise =
        NoiseDose.NONE.and(mixer, inOneDay(mixing / 3600)).and(GRINDER, inOneDay(job.grindHours()));
    if (noise.level() < LOWER_ACTION) {
      return Optional.empty();
    }
    boolean grave = noise.level() >= UPPER_ACTION || noise.dose() >= 1;
    Severity severity = grave ? Severity.WARNING : Severity.CAUTION;
    return Optional.of(
        tools(mixer, mixing, grinding, severity)
            .with("dose", (int) Math.round(100 * noise.dose()))
            .with("day", (int) Math.round(noise.level()))
            .with("hours", NoiseDose.DAY)
            .with("action", UPPER_ACTION)
            .valued(Amount.of(mixing + grinding, Dimension.TIME)));
  }

  /** Longer work takes several days. */
  private static double inOneDay(double hours) {
    return Math.min(NoiseDose.DAY, hours);
  }

  private static Note tools(int mixer, double mixing, double grinding, Severity severity) {
    if (grinding == 0) {
      return Note.of("noise-of-mixing", severity, BASIS, "mixer", mixer);
    }
    Note note = Note.of(mixing > 0 ? "noise" : "noise-of-grinding", severity, BASIS);
    note = note.with("grinder", GRINDER);
    return mixing > 0
        ? note.with("mixer", mixer)
            .with("mixing", Amount.of(mixing, Dimension.TIME))
            .with("grinding", Amount.of(grinding, Dimension.TIME))
        : note;
  }
}
