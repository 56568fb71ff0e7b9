package dev.fillplane.safety;

import java.util.Optional;

/**
 * One thing that can hurt; it gives a note only if a value or a condition of the job calls for it.
 */
interface Rule {

  Optional<Note> note(SafetyInput job);
}
