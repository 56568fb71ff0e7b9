package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import java.util.Optional;

/** Something found of the structure that asks for an engineer; one rule for each kind. */
record StructureFound(StructureKind kind, String code, Severity severity) implements Rule {

  private static final String BASIS =
      "common practice, no source: structure is for a licensed engineer";

  @Override
  public Optional<Note> note(SafetyInput job) {
    Amount load = job.load();
    return job.isWork() && job.premises().has(kind)
        ? Optional.of(Note.of(code, severity, BASIS).valued(load))
        : Optional.empty();
  }
}
