package dev.fillplane.safety;

import static dev.fillplane.safety.JobNotes.FEW;
import static dev.fillplane.safety.JobNotes.assertNotes;
import static dev.fillplane.safety.JobNotes.note;
import static dev.fillplane.safety.JobNotes.notes;
import static dev.fillplane.safety.Jobs.job;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Substrate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which request triggers which note; the triggers of a new concrete floor first. */
class SafetyNotesTest {

  private static final String LITTLE_GRINDING =
      "+hot-wheel:CAUTION -noise-of-mixing +noise:CAUTION";

  private static final String WOOD = FEW + "-added-load +engineer-unknown-joists:WARNING ";

  /** More than 10 batches, 42 minutes of mixing or more. */
  private static final String MANY = "+noise-of-mixing:CAUTION +hot-mixer:CAUTION";

  @Test
  void usualPour() {
    assertNotes(job(), "");
  }

  @Test
  void nothingToDoHurtsNobody() {
    assertEquals(List.of(), notes(job().bags(0, 0)));
  }

  @Test
  void ventilation() {
    assertNotes(
        job().ventilated(Optional.empty()),
        "-silica-at-mixing +silica-at-mixing-air-unknown:WARNING");
    assertNotes(
        job().ventilated(Optional.of(false)),
        "-silica-at-mixing +silica-at-mixing-still-air:DANGER");
  }

  @Test
  void gypsumIsMilder() {
    assertNotes(
        job().gypsum(),
        "-wet-cement -eye-rinse -wash-water-of-cement +wet-gypsum:CAUTION +wash-water-of-gypsum:NOTICE");
  }

  @Test
  void grinding() {
    assertNotes(job().grind(0.4), "+silica-at-grinding:WARNING " + LITTLE_GRINDING);
    assertNotes(
        job().grind(0.4).ventilated(Optional.of(false)),
        "-silica-at-mixing +silica-at-mixing-still-air:DANGER +silica-at-grinding:DANGER "
            + LITTLE_GRINDING);
    assertEquals(
        List.of("silica-at-grinding", "hot-wheel", "noise-of-grinding", "silica-at-clean-up"),
        notes(job().bags(0, 0).grind(1)).stream().map(Note::code).toList());
  }

  @Test
  void oldFloors() {
    assertNotes(concrete(2005), "");
    assertNotes(concrete(2004), "+asbestos-suspect:WARNING");
    assertNotes(concrete(1999), "+asbestos-suspect:WARNING");
    assertNotes(concrete(1981), "+asbestos-suspect:WARNING");
    assertNotes(concrete(1980), "+asbestos-suspect:DANGER");
    assertNotes(concrete(1978), "+asbestos-suspect:DANGER");
    assertNotes(concrete(1977), "+asbestos-suspect:DANGER +lead-paint-suspect:WARNING");
    assertNotes(
        concrete(1990).grind(0.4),
        "+asbestos-suspect:DANGER +silica-at-grinding:WARNING " + LITTLE_GRINDING);
    assertNotes(
        concrete(1970).grind(0.4),
        "+asbestos-suspect:DANGER +lead-paint-suspect:DANGER +silica-at-grinding:WARNING "
            + LITTLE_GRINDING);
  }

  /** 29 CFR 1926.62: 50 ug/m3 over 8 h, 400 over the hours beyond: 40 in 10 h (derived). */
  @Test
  void leadOverLongShifts() {
    assertEquals(50e-9, OldPaint.limit(0), 1e-18);
    assertEquals(50e-9, OldPaint.limit(8), 1e-18);
    assertEquals(40e-9, OldPaint.limit(10), 1e-18);
    Note note = note(concrete(1970).grind(80), "lead-paint-suspect");
    assertEquals(40e-9, note.limit().orElseThrow().si(), 1e-18);
  }

  @Test
  void unknownYear() {
    assertNotes(job().bags(5, 600).roomOfUnknown("hall"), FEW + "+asbestos-year-unknown:WARNING");
    assertNotes(
        job().bags(5, 600).roomOfUnknown("hall").grind(0.4),
        FEW
            + "+asbestos-year-unknown:DANGER +silica-at-grinding:WARNING +hot-wheel:CAUTION"
            + " +noise:CAUTION");
  }

  @Test
  void roomsAreNamedWithTheEarliestYear() {
    Note note =
        note(
            job()
                .room("hall", Substrate.CONCRETE, 1985)
                .room("store", Substrate.CONCRETE, 1962)
                .room("bath", Substrate.TILE, 2010),
            "asbestos-suspect");
    assertEquals(
        Map.of("rooms", "hall, store", "year", 1962, "presumed", 1980, "clear", 2005),
        note.values());
    assertEquals(List.of("hall", "store"), note.rooms());
  }

  @Test
  void weather() {
    assertNotes(job().air(9.9), "+heater-fumes:WARNING");
    assertNotes(job().air(10), "");
    assertNotes(job().air(29.9), "");
    assertNotes(job().air(30), "+heat-stress:WARNING");
    assertNotes(
        job().air(5).ventilated(Optional.of(false)),
        "-silica-at-mixing +silica-at-mixing-still-air:DANGER +heater-fumes:DANGER");
  }

  @Test
  void rails() {
    assertNotes(job().rails(2), "+rail-trip:CAUTION");
  }

  /** 20 kg/m2 is 10 mm at 2,000 kg/m3; 10 psf is 24.4 mm. */
  @Test
  void addedLoad() {
    assertNotes(job().depths(0.02, 0.025), "-added-load +added-load:CAUTION");
    assertNotes(job().depths(0.025, 0.025), "-added-load +added-load:WARNING");
    assertNotes(wood().depths(0.0099, 0.012), WOOD + "+added-load:CAUTION");
    assertNotes(wood().depths(0.0101, 0.012), WOOD + "+added-load-on-wood:WARNING");
    assertNotes(
        wood().depths(0.025, 0.03),
        WOOD + "+added-load-on-wood:DANGER +engineer-deep-on-wood:WARNING");
  }

  /** 40 psf on 0.96 m2 is 187 kg: 7 bags of 25 kg pass, 8 do not; 15 are over twice as much. */
  @Test
  void palletOnJoists() {
    String load = WOOD + "+added-load:CAUTION ";
    assertNotes(wood().bags(7, 900), load);
    assertNotes(wood().bags(8, 900), load + "+bag-pallet:WARNING");
    assertNotes(wood().bags(14, 4200), load + "+bag-pallet:WARNING " + MANY);
    assertNotes(wood().bags(15, 4200), load + "+bag-pallet:DANGER " + MANY);
    assertNotes(
        job().bags(15, 900).roomOfUnknown("hall"),
        "+asbestos-year-unknown:WARNING +bag-pallet:WARNING");
  }

  @Test
  void lifting() {
    assertNotes(job().bagMass(10), "-bag-lifting -heavy-batch");
    assertNotes(job().bags(24, 180), "-bag-lifting +bag-lifting:WARNING");
  }

  /** 1.5 in at 2,000 kg/m3 is 15.6 psf (derived) against 10. */
  @Test
  void loadOfAnInchAndAHalf() {
    Note note = note(job().depths(0.0381, 0.0381), "added-load");
    assertAmount(15.6, 0.01, note.value());
    assertAmount(10, 1e-9, note.limit());
  }

  /** A full pallet of a tonne: 10 to 14 kPa is common practice, no source. */
  @Test
  void loadOfAPallet() {
    Note note = note(wood().bags(60, 3600), "bag-pallet");
    assertEquals(10215, note.value().orElseThrow().si(), 1);
    assertAmount(40, 1e-9, note.limit());
  }

  /** 29 CFR 1926.1153 table 1: 25 cfm an inch, 125 cfm for a wheel of 5 in. */
  @Test
  void airOfAShroud() {
    assertAmount(125, 1e-9, note(job().grind(1), "silica-at-grinding").value());
  }

  /** Derived: 50 lb, one a minute, up to an hour: 24.0 lb recommended, index 2.08. */
  @Test
  void bagOfFiftyPounds() {
    Note note = note(job().bagMass(50 * 0.45359237).bags(40, 2400), "bag-lifting");
    assertAmount(50, 1e-9, note.value());
    assertAmount(24.0, 0.05, note.limit());
    assertEquals("2.1", note.values().get("index"));
    assertEquals("1.8", note.values().get("rimIndex"));
    assertEquals("1.5", note.values().get("standIndex"));
    assertEquals("1.1", note.values().get("halfIndex"));
    assertEquals("1.6", note.values().get("pairIndex"));
    assertEquals("1.0", note.values().get("rate"));
  }

  @Test
  void amountOfPowderAndWater() {
    assertEquals(600, note(job(), "silica-at-mixing").value().orElseThrow().si());
    assertEquals(0.12, note(job(), "power-near-water").value().orElseThrow().si(), 1e-12);
  }

  @Test
  void gravestFirstThenByCode() {
    List<Note> notes =
        notes(concrete(1970).grind(2).air(5).rails(1).ventilated(Optional.of(false)));
    assertTrue(notes.size() > 8);
    for (int i = 1; i < notes.size(); i++) {
      Note before = notes.get(i - 1);
      int order = before.severity().compareTo(notes.get(i).severity());
      assertTrue(order < 0 || (order == 0 && before.code().compareTo(notes.get(i).code()) < 0));
    }
  }

  @Test
  void everyNoteNamesItsBasis() {
    notes(concrete(1970).grind(2).rails(1)).forEach(note -> assertFalse(note.basis().isBlank()));
  }

  private static Jobs concrete(int built) {
    return job().room("hall", Substrate.CONCRETE, built);
  }

  private static Jobs wood() {
    return job().bags(7, 900).room("hall", Substrate.WOOD, 2015);
  }

  private static void assertAmount(double us, double tolerance, Optional<Amount> amount) {
    assertEquals(us, amount.orElseThrow().in(UnitSystem.US), tolerance);
  }
}
