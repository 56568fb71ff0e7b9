package dev.fillplane.safety;

import static dev.fillplane.safety.JobNotes.FEW;
import static dev.fillplane.safety.JobNotes.assertNotes;
import static dev.fillplane.safety.JobNotes.note;
import static dev.fillplane.safety.JobNotes.notes;
import static dev.fillplane.safety.Jobs.job;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.heat.MoistureVerdict;
import dev.fillplane.room.BaseKind;
import dev.fillplane.room.FeatureKind;
import dev.fillplane.room.OldCovering;
import dev.fillplane.room.Substrate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which fact of the place triggers which note, against those of a usual pour. */
class PremisesNotesTest {

  /** The usual pour weighs 9 mm at 2,000 kg/m3 in the mean, 3.7 psf, and 15 mm at most, 6.1. */
  @Test
  void loadAgainstTheAllowanceTold() {
    assertNotes(job().allowance(6.2), "-added-load +added-load-within:NOTICE");
    assertNotes(job().allowance(6.1), "-added-load +added-load-over:WARNING");
    assertNotes(job().allowance(3.7), "-added-load +added-load-over:WARNING");
    assertNotes(job().allowance(3.6), "-added-load +added-load-over:DANGER");
    assertNotes(
        job().bags(7, 900).room("hall", Substrate.WOOD, 2015).depths(0.02, 0.02).allowance(10),
        FEW + "-added-load +added-load-within:NOTICE");
  }

  /** Derived: 20 mm at 2,000 kg/m3 over joists of 4 m that just meet L/360 at 40 psf: 2.3 mm. */
  @Test
  void sagOnJoists() {
    Jobs wood =
        job().bags(7, 900).room("hall", Substrate.WOOD, 2015).depths(0.02, 0.025).joistSpan(4);
    assertNotes(wood, FEW + "-added-load +added-load-on-wood:WARNING +joist-sag:CAUTION");
    Note sag = note(wood, "joist-sag");
    assertEquals(0.00228, sag.value().orElseThrow().si(), 0.00001);
    assertEquals(4.0 / 360, sag.limit().orElseThrow().si(), 1e-12);
    assertEquals(4, sag.values().get("bags"));
    assertNotes(job().joistSpan(4), "");
  }

  /** 40 psf is 97.6 mm at 2,000 kg/m3. */
  @Test
  void sagBeyondTheLiveLoad() {
    Jobs deep =
        job().bags(7, 900).room("hall", Substrate.WOOD, 2015).depths(0.098, 0.098).joistSpan(4);
    assertEquals(Severity.DANGER, note(deep, "joist-sag").severity());
    assertEquals(Severity.CAUTION, note(deep.depths(0.097, 0.097), "joist-sag").severity());
  }

  /** IRC table R301.7: 12 ft at L/360 is 0.400 in. */
  @Test
  void deflectionOfTwelveFeet() {
    Jobs wood = job().room("hall", Substrate.WOOD, 2015).joistSpan(12 * 0.3048);
    assertEquals(0.4 * 0.0254, note(wood, "joist-sag").limit().orElseThrow().si(), 1e-12);
  }

  @Test
  void palletsWhereTheFloorSpansAVoid() {
    assertNotes(job().bags(8, 900).suspended(true), FEW + "+bag-pallet:WARNING");
    assertNotes(
        job().bags(15, 4500).roomOfUnknown("hall").suspended(false),
        "+asbestos-year-unknown:WARNING");
  }

  @Test
  void oldFloorsByCountry() {
    assertNotes(built(1999).where(Jurisdiction.US), "+asbestos-suspect:WARNING");
    assertNotes(built(1980).where(Jurisdiction.US), "+asbestos-suspect:DANGER");
    assertNotes(built(1999).where(Jurisdiction.UK), "+asbestos-suspect:DANGER");
    assertNotes(built(2000).where(Jurisdiction.UK), "");
    assertNotes(built(2004).where(Jurisdiction.EU), "+asbestos-suspect:DANGER");
    assertNotes(built(2004), "+asbestos-suspect:WARNING");
    assertNotes(built(2005).where(Jurisdiction.EU), "");
  }

  @Test
  void oldFloorsByCoveringAndTest() {
    assertNotes(built(1990).oldCovering(OldCovering.CARPET), "+asbestos-suspect:WARNING");
    assertNotes(built(1990).oldCovering(OldCovering.RESILIENT), "+asbestos-suspect:DANGER");
    assertNotes(
        job().bags(5, 600).roomOfUnknown("hall").oldCovering(OldCovering.RESILIENT),
        FEW + "+asbestos-year-unknown:DANGER");
    assertNotes(built(1960).tested(), "");
    assertNotes(job().bags(5, 600).roomOfUnknown("hall").tested(), FEW);
  }

  @Test
  void heaters() {
    assertNotes(job().heater(Heater.UNFLUED), "+heater-unflued:DANGER");
    for (Heater other : List.of(Heater.NONE, Heater.ELECTRIC, Heater.FLUED)) {
      assertNotes(job().air(5).heater(other), "");
    }
  }

  @Test
  void solventsAndFlames() {
    assertNotes(job().solvents(), "+solvent-primer:WARNING");
    assertNotes(job().flames(), "+open-flames:WARNING");
    assertNotes(job().solvents().flames(), "+open-flames:WARNING +solvent-primer:DANGER");
    assertNotes(
        job().solvents().ventilated(Optional.of(false)),
        "-silica-at-mixing +silica-at-mixing-still-air:DANGER +solvent-primer:DANGER");
  }

  /** 30 C at 40 % feels like 30, at 70 % like 35; 35 C at 60 % like 45. */
  @Test
  void heatByHumidity() {
    assertNotes(job().air(28).humidity(0.4), "");
    assertNotes(job().air(29.5).humidity(0.7), "+heat-stress-humid:WARNING");
    assertNotes(job().air(30).humidity(0.2), "+heat-stress:WARNING");
    assertNotes(job().air(35).humidity(0.6), "+heat-stress-humid:DANGER");
  }

  @Test
  void whenNotToPour() {
    assertNotes(job().moisture(15, 0.1), "");
    assertNotes(job().moisture(15.1, 0.1), "+do-not-pour-near-dew-point:NOTICE");
    assertNotes(job().moisture(5, 0.5), "");
    assertNotes(job().moisture(5, 0.51), "+do-not-pour-in-drying-air:NOTICE");
    assertNotes(job().slabMoisture(MoistureVerdict.GO), "");
    assertNotes(job().slabMoisture(MoistureVerdict.NO_GO), "+do-not-pour-on-wet-slab:NOTICE");
    assertNotes(job().bags(0, 0).grind(1).moisture(17, 0.9), onlyGrinding());
  }

  @Test
  void bases() {
    assertNotes(job().base(BaseKind.WEAK), "+base-weak:NOTICE");
    assertNotes(job().base(BaseKind.ASPHALT), "+base-weak:NOTICE");
    assertNotes(job().room("hall", Substrate.GYPSUM, 2015), "+base-weak:NOTICE");
    assertNotes(
        job().depths(0.02, 0.021).base(BaseKind.INSULATION),
        "-added-load +added-load:NOTICE +base-on-insulation:NOTICE");
    assertNotes(job().heating(FloorHeating.OFF), "+heated-floor:WARNING");
    assertNotes(job().least(0.0099).heating(FloorHeating.OFF), "+heated-floor:WARNING");
    assertNotes(job().least(0.01).heating(FloorHeating.OFF), "+heated-floor:CAUTION");
    assertNotes(job().heating(FloorHeating.NONE), "");
  }

  @Test
  void features() {
    assertNotes(job().feature(FeatureKind.MOVING_JOINT), "+moving-joints:NOTICE");
    assertNotes(job().feature(FeatureKind.CABLE), "+hidden-cables:WARNING");
    assertNotes(
        job().feature(FeatureKind.DRAIN).feature(FeatureKind.BOX).feature(FeatureKind.BOX),
        "+floor-openings:CAUTION");
    assertEquals(
        "drain, box",
        note(job().feature(FeatureKind.BOX).feature(FeatureKind.DRAIN), "floor-openings")
            .values()
            .get("kinds"));
    assertNotes(job().feature(FeatureKind.CRACK), "");
  }

  /** 8 m2 an hour: over 32 m2 take one person more than 4 h, then APF 10 indoors. */
  @Test
  void longGrinding() {
    String noise = " -noise-of-mixing +noise:WARNING +hot-wheel:CAUTION";
    assertNotes(job().grind(32), "+silica-at-grinding:WARNING" + noise);
    assertNotes(job().grind(32.1), "+silica-at-long-grinding:WARNING" + noise);
    assertNotes(job().grind(32.1).areaPerHour(16), "+silica-at-grinding:WARNING" + noise);
    Note note = note(job().grind(36), "silica-at-long-grinding");
    assertEquals(10, note.values().get("apf"));
    assertEquals("4.5", note.values().get("hours"));
  }

  @Test
  void limitsOfTheCountryTold() {
    String all = note(job(), "silica-at-mixing").basis();
    assertTrue(all.contains("US limit 50") && all.contains("EU limit 100"), all);
    String uk = note(job().where(Jurisdiction.UK), "silica-at-mixing").basis();
    assertTrue(uk.contains("UK limit 100 ug/m3 (HSE EH40)"), uk);
    assertFalse(uk.contains("US limit") || uk.contains("EU limit"), uk);
    assertEquals(15, note(job().where(Jurisdiction.US), "wet-cement").values().get("minutes"));
    assertEquals(20, note(job(), "wet-cement").values().get("minutes"));
  }

  @Test
  void nothingToDoHurtsNobodyWhateverThePlace() {
    Jobs idle =
        job()
            .bags(0, 0)
            .solvents()
            .flames()
            .base(BaseKind.WEAK, BaseKind.INSULATION)
            .heating(FloorHeating.OFF)
            .structure(StructureKind.values())
            .stone()
            .tiled()
            .sag(0.1)
            .spacing(1)
            .suspended(true)
            .feature(FeatureKind.DRAIN)
            .feature(FeatureKind.CABLE)
            .feature(FeatureKind.MOVING_JOINT)
            .slabMoisture(MoistureVerdict.NO_GO)
            .moisture(17, 0.9);
    assertEquals(List.of(), notes(idle));
  }

  private static String onlyGrinding() {
    return FEW
        + "-silica-at-mixing -wet-cement -power-near-water -bag-lifting -slippery-floor -added-load"
        + " -heavy-batch -eye-rinse -wash-water-of-cement +silica-at-grinding:WARNING +hot-wheel:CAUTION"
        + " +noise-of-grinding:CAUTION";
  }

  private static Jobs built(int year) {
    return job().room("hall", Substrate.CONCRETE, year);
  }
}
