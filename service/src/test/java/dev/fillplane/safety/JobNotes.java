package dev.fillplane.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The notes of invented jobs, held against those of a usual pour. */
final class JobNotes {

  private static final Map<String, Severity> USUAL =
      Map.ofEntries(
          Map.entry("silica-at-mixing", Severity.WARNING),
          Map.entry("wet-cement", Severity.WARNING),
          Map.entry("power-near-water", Severity.WARNING),
          Map.entry("silica-at-clean-up", Severity.CAUTION),
          Map.entry("eye-rinse", Severity.CAUTION),
          Map.entry("wash-water-of-cement", Severity.CAUTION),
          Map.entry("bag-lifting", Severity.CAUTION),
          Map.entry("heavy-batch", Severity.CAUTION),
          Map.entry("slippery-floor", Severity.CAUTION),
          Map.entry("noise-of-mixing", Severity.CAUTION),
          Map.entry("hot-mixer", Severity.CAUTION),
          Map.entry("added-load", Severity.NOTICE));

  /** What goes with few bags: up to 10 batches, a short run of the mixer. */
  static final String FEW = "-noise-of-mixing -hot-mixer ";

  private JobNotes() {}

  /** Changes against the usual pour: {@code -code} is gone, {@code +code:SEVERITY} is new. */
  static void assertNotes(Jobs job, String changes) {
    Map<String, Severity> expected = new TreeMap<>(USUAL);
    Arrays.stream(changes.split(" "))
        .filter(change -> !change.isEmpty())
        .forEach(change -> apply(change, expected));
    Map<String, Severity> found = new TreeMap<>();
    notes(job).forEach(note -> found.put(note.code(), note.severity()));
    assertEquals(expected, found);
  }

  private static void apply(String change, Map<String, Severity> expected) {
    int colon = change.indexOf(':');
    if (change.startsWith("-")) {
      expected.remove(change.substring(1));
    } else {
      expected.put(change.substring(1, colon), Severity.valueOf(change.substring(colon + 1)));
    }
  }

  static Note note(Jobs job, String code) {
    return notes(job).stream().filter(note -> note.code().equals(code)).findFirst().orElseThrow();
  }

  static List<Note> notes(Jobs job) {
    return SafetyNotes.of(job.input());
  }
}
