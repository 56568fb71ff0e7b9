package dev.fillplane.safety;

import static dev.fillplane.safety.JobNotes.FEW;
import static dev.fillplane.safety.JobNotes.assertNotes;
import static dev.fillplane.safety.JobNotes.note;
import static dev.fillplane.safety.JobNotes.notes;
import static dev.fillplane.safety.Jobs.job;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.quantity.Amount;
import dev.fillplane.room.OldCovering;
import dev.fillplane.room.Substrate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which work triggers which note: noise, hot tools, buckets, water for eyes and barrels. */
class WorkNotesTest {

  /** 10 batches of 3 minutes at 92 dBA are 79.96 dBA in the mean of 8 h, 32 are 85.01. */
  @Test
  void noiseOfMixing() {
    assertNotes(job().bags(10, 1200), FEW);
    assertNotes(job().bags(11, 1200), "");
    assertNotes(job().bags(31, 4000), "");
    assertNotes(job().bags(32, 4000), "-noise-of-mixing +noise-of-mixing:WARNING");
    Note note = note(job(), "noise-of-mixing");
    assertEquals(72 * 60, note.value().orElseThrow().si(), 1e-9);
    assertEquals(20, note.values().get("dose"));
    assertEquals(84, note.values().get("day"));
  }

  /** An hour of grinding at 100 dBA is half the US limit, 91 dBA in the mean of the day. */
  @Test
  void noiseOfGrinding() {
    Note note = note(job().bags(0, 0).grind(8), "noise-of-grinding");
    assertEquals(Severity.WARNING, note.severity());
    assertEquals(50, note.values().get("dose"));
    assertEquals(91, note.values().get("day"));
    assertEquals(3600, note.value().orElseThrow().si(), 1e-9);
    assertEquals(
        Severity.CAUTION,
        note(job().bags(0, 0).grind(8).areaPerHour(64), "noise-of-grinding").severity());
  }

  /** 72 minutes of mixing at 92 dBA take 19.8 % of the dose, an hour at 100 dBA 50. */
  @Test
  void noiseOfBoth() {
    Note note = note(job().grind(8), "noise");
    assertEquals(70, note.values().get("dose"));
    assertEquals(132 * 60, note.value().orElseThrow().si(), 1e-9);
  }

  @Test
  void aPumpIsLoudForAsLongAsItPours() {
    assertNotes(
        job().pump().bags(24, 5400),
        "-heavy-batch -hot-mixer -noise-of-mixing +noise-of-mixing:CAUTION");
    Note note = note(job().pump().bags(24, 5400), "noise-of-mixing");
    assertEquals(88, note.values().get("mixer"));
    assertEquals(5400, note.value().orElseThrow().si(), 1e-9);
  }

  @Test
  void mixersRestAfterTenBatches() {
    assertEquals(
        List.of(), notes(job().bags(10, 1200)).stream().filter(WorkNotesTest::isHot).toList());
    assertNotes(job().bags(11, 1200), "");
    assertEquals(24, note(job(), "hot-mixer").values().get("batches"));
  }

  /** 25 kg and 5 L are 30 kg. */
  @Test
  void batchesAreHeavierThanBags() {
    assertEquals(30, note(job(), "heavy-batch").value().orElseThrow().si(), 1e-9);
    assertNotes(job().bagMass(20), "-heavy-batch");
    assertNotes(job().bagMass(20.1), "");
    assertNotes(job().bagMass(45), "+bag-lifting:WARNING");
    assertNotes(job().bagMass(45.1), "+bag-lifting:WARNING +heavy-batch:WARNING");
  }

  /** 55 ft are 16.76 m; 0.4 gal a minute for 15 minutes are 6 gal (ANSI Z358.1, from memory). */
  @Test
  void rinseForEyes() {
    assertNotes(job().carry(16.7), "");
    assertNotes(job().carry(16.8), "-eye-rinse +eye-rinse-twice:WARNING");
    Note us = note(job().where(Jurisdiction.US), "eye-rinse");
    assertEquals(6 * 0.003785411784, ((Amount) us.values().get("water")).si(), 1e-12);
    assertEquals(15, us.values().get("minutes"));
    assertEquals(20, note(job(), "eye-rinse").values().get("minutes"));
  }

  /** 20 to 40 L a barrel: common practice, no source; two barrels for a mixer. */
  @Test
  void waterOfBarrels() {
    Note note = note(job(), "wash-water-of-cement");
    assertEquals(0.080, note.value().orElseThrow().si(), 1e-12);
    assertEquals(2, note.values().get("barrels"));
    assertEquals(12, note.values().get("ph"));
  }

  private static boolean isHot(Note note) {
    return note.code().equals("hot-mixer");
  }

  /** 1/4 in is 6.35 mm, 1/2 in 12.7 mm: common practice, no source. */
  @Test
  void edgesAtOpenings() {
    assertNotes(job().opening(Optional.empty(), 0.0063), "");
    assertNotes(job().opening(Optional.empty(), 0.0064), "+edge-trip:CAUTION");
    assertNotes(job().opening(Optional.empty(), 0.0128), "+edge-trip:WARNING");
    assertNotes(job().opening(Optional.of("store"), 0.02), "");
    Note note = note(job().opening(Optional.empty(), 0.011), "edge-trip");
    assertEquals(0.011, note.value().orElseThrow().si(), 1e-12);
    assertEquals(List.of("hall"), note.rooms());
  }

  @Test
  void woodIsSandedAwayFromFlames() {
    String dust =
        FEW
            + "-added-load +added-load:CAUTION +engineer-unknown-joists:WARNING"
            + " +silica-at-grinding:WARNING +hot-wheel:CAUTION +noise:CAUTION ";
    Jobs wood = job().bags(5, 600).room("hall", Substrate.WOOD, 2015).grind(0.4);
    assertNotes(wood, dust + "+wood-dust:WARNING");
    assertNotes(wood.flames(), dust + "+wood-dust:DANGER +open-flames:WARNING");
    assertNotes(
        job().room("hall", Substrate.CONCRETE, 2015, OldCovering.WOOD).grind(0.4),
        "-noise-of-mixing +silica-at-grinding:WARNING +hot-wheel:CAUTION +noise:CAUTION"
            + " +wood-dust:WARNING");
    assertNotes(
        job().room("hall", Substrate.CONCRETE, 2015, OldCovering.WOOD).flames(),
        "+open-flames:WARNING");
  }
}
