package dev.fillplane.safety;

import static dev.fillplane.safety.JobNotes.FEW;
import static dev.fillplane.safety.JobNotes.assertNotes;
import static dev.fillplane.safety.JobNotes.note;
import static dev.fillplane.safety.JobNotes.notes;
import static dev.fillplane.safety.Jobs.job;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.room.Substrate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When the answer is to stop and ask a licensed engineer. */
class EngineerNotesTest {

  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;
  private static final String WOOD = FEW + "-added-load +added-load:CAUTION ";

  @Test
  void joistsOfWhichNothingIsTold() {
    assertNotes(wood(), WOOD + "+engineer-unknown-joists:WARNING");
    assertNotes(wood().joistSpan(4), WOOD + "+joist-sag:CAUTION");
    assertNotes(wood().allowance(20), FEW + "-added-load +added-load-within:NOTICE");
  }

  /** About 25 mm: judgement, no source. */
  @Test
  void deepFillOnWood() {
    assertNotes(wood().depths(0.009, 0.025), WOOD + "+engineer-unknown-joists:WARNING");
    assertNotes(
        wood().depths(0.009, 0.0251),
        WOOD + "+engineer-unknown-joists:WARNING +engineer-deep-on-wood:WARNING");
    assertNotes(job().depths(0.009, 0.0251), "-added-load +added-load:CAUTION");
  }

  /** L/240 of 4.8 m is 20 mm: judgement, no source. */
  @Test
  void floorsThatHang() {
    assertNotes(job().joistSpan(4.8).sag(0.02), "");
    assertNotes(job().joistSpan(4.8).sag(0.0201), "+engineer-sag:DANGER");
    assertNotes(job().sag(0.0201), "");
    assertEquals(
        0.02,
        note(job().joistSpan(4.8).sag(0.03), "engineer-sag").limit().orElseThrow().si(),
        1e-12);
  }

  /**
   * L/720 up to 14 ft, 7/32 in beyond (a marble institute as quoted by a joist maker); at 14 ft
   * L/720 would be 0.2333 in, so the lower of both holds across the step (derived).
   */
  @ParameterizedTest
  @CsvSource({"10, 0.16667", "13.125, 0.21875", "14, 0.21875", "14.1, 0.21875", "20, 0.21875"})
  void bendUnderStone(double feet, double inches) {
    assertEquals(inches, StoneOnJoists.allowed(feet * FOOT) / INCH, 1e-5);
  }

  /** IRC table R301.7: 10 ft at L/360 are 1/3 in. */
  @Test
  void stone() {
    assertNotes(wood().stone(), WOOD + UNKNOWN_STONE);
    assertNotes(
        job().bags(5, 600).stone().suspended(true), FEW + "+engineer-stone-span-unknown:WARNING");
    assertNotes(job().stone().suspended(false), "");
    Note note = note(wood().stone().joistSpan(10 * FOOT), "engineer-stone");
    assertEquals(1.0 / 3, note.value().orElseThrow().si() / INCH, 1e-12);
    assertEquals(1.0 / 6, note.limit().orElseThrow().si() / INCH, 1e-12);
  }

  private static final String UNKNOWN_STONE =
      "+engineer-unknown-joists:WARNING +engineer-stone-span-unknown:WARNING";

  /** 9 mm at 2,000 kg/m3 are 176.5 Pa, 9.2 % of 40 psf: L/360 of 3.6 m grows to 10.92 mm. */
  @Test
  void tile() {
    assertNotes(wood().tiled(), WOOD + "+engineer-unknown-joists:WARNING");
    assertNotes(wood().tiled().joistSpan(3.6), WOOD + "+joist-sag:CAUTION +engineer-tile:WARNING");
    assertNotes(job().tiled().joistSpan(3.6), "");
    Note note = note(wood().tiled().joistSpan(3.6), "engineer-tile");
    assertEquals(0.01092, note.value().orElseThrow().si(), 5e-6);
    assertEquals(0.01, note.limit().orElseThrow().si(), 1e-12);
  }

  /** 16 in: a joist maker's technical note of 2003. */
  @Test
  void spacingUnderTileAndStone() {
    assertNotes(job().tiled().spacing(16 * INCH), "");
    assertNotes(job().tiled().spacing(16.1 * INCH), "+engineer-joist-spacing:WARNING");
    assertNotes(
        job().suspended(false).stone().spacing(16.1 * INCH), "+engineer-joist-spacing:WARNING");
    assertNotes(job().spacing(24 * INCH), "");
  }

  @Test
  void whatWasFound() {
    assertNotes(
        job().structure(StructureKind.CONCENTRATED_LOAD), "+engineer-concentrated-load:WARNING");
    assertNotes(job().structure(StructureKind.DAMAGED_JOISTS), "+engineer-damaged-joists:DANGER");
    assertNotes(job().structure(StructureKind.POST_TENSIONED), "+engineer-post-tensioned:WARNING");
    assertNotes(job().structure(StructureKind.MOVING_CRACKS), "+engineer-moving-cracks:WARNING");
    assertNotes(job().structure(), "");
    List<String> all =
        notes(job().structure(StructureKind.values())).stream()
            .map(Note::code)
            .filter(code -> code.startsWith("engineer-"))
            .toList();
    assertEquals(StructureKind.values().length, all.size());
  }

  @Test
  void theLoadStandsBesideWhatWasFound() {
    Note note = note(job().structure(StructureKind.MOVING_CRACKS), "engineer-moving-cracks");
    assertEquals(0.009 * 2000 * 9.80665, note.value().orElseThrow().si(), 1e-9);
    assertTrue(note.basis().contains("licensed engineer"));
  }

  private static Jobs wood() {
    return job().bags(5, 600).room("hall", Substrate.WOOD, 2015);
  }
}
