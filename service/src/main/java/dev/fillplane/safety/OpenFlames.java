package dev.fillplane.safety;

import java.util.Optional;

/** Gas appliances and pilot lights where air is shut in or carried off, and where dust rises. */
final class OpenFlames implements Rule {

  private static final String BASIS =
      "common practice, no source; whoever may work on gas decides. Carbon monoxide: OSHA 50 ppm,"
          + " NIOSH 35 ppm in the mean of 8 h, never over 200 ppm";

  @Override
  public Optional<Note> note(SafetyInput job) {
    return job.premises().hasFlames() && job.isWork()
        ? Optional.of(Note.of("open-flames", Severity.WARNING, BASIS))
        : Optional.empty();
  }
}
