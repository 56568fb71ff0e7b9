package dev.fillplane.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Wedges 8 m long and 1 m wide in closed form; the usual sheet wants 3 mm. */
class ThinAreaTest {

  private static final DataSheet SHEET = Catalogue.usual();
  private static final ThinArea NONE = new ThinArea(0.003, 0, 0, 0, 0, 0);

  /**
   * 4 mm deeper with every metre, from 4 mm above the target: poured from 1 m on, thick enough from
   * 1.75 m on.
   */
  @Test
  void aWedgeThatRunsOut() {
    ThinArea thin = thin(new Wedge(-0.004, 0.028), SHEET);
    assertThin(0.75, 0.75 * 0.0015, 0.007, 1.75, 1.75 * 0.007 / 2, thin);
  }

  @Test
  void aFeatherEdgeAtTheHighestPlace() {
    ThinArea thin = thin(new Wedge(0, 0.032), SHEET);
    assertThin(0.75, 0.75 * 0.0015, 0.003, 0.75, 0.75 * 0.0015, thin);
  }

  @Test
  void aSkimIsThinEverywhere() {
    assertThin(8, 8 * 0.002, 0.001, 8, 8 * 0.001, thin(new Wedge(0.002, 0.002), SHEET));
  }

  @Test
  void nothingIsThin() {
    assertEquals(NONE, thin(new Wedge(0.003, 0.030), SHEET));
    assertEquals(NONE, thin(new Wedge(0.003, 0.003), SHEET));
    assertEquals(NONE, thin(new Wedge(-0.030, -0.003), SHEET));
    assertEquals(
        new ThinArea(0, 0, 0, 0, 0, 0), thin(new Wedge(-0.004, 0.028), Sheets.withLifts(0, 0.030)));
  }

  @Test
  void theWarningSaysWhatMendsIt() {
    Findings findings = new Findings();
    thin(new Wedge(0.003, 0.030), SHEET).warn(Place.root().at("target"), findings);
    assertEquals(List.of(), findings.warnings());
    thin(new Wedge(-0.004, 0.028), SHEET).warn(Place.root().at("target"), findings);
    Finding warning = findings.warnings().get(0);
    assertEquals("thin-area #/target", warning.code() + " " + warning.place());
    assertEquals(
        List.of("area", "minimum", "missing", "grindArea", "grindVolume"),
        List.copyOf(warning.values().keySet()));
  }

  private static ThinArea thin(Wedge wedge, DataSheet sheet) {
    return ThinArea.of(wedge, wedge.summary(), sheet);
  }

  private static void assertThin(
      double area,
      double volume,
      double missing,
      double grindArea,
      double grindVolume,
      ThinArea thin) {
    assertEquals(0.003, thin.minimum());
    assertEquals(area, thin.area(), 1e-6);
    assertEquals(volume, thin.volume(), 1e-8);
    assertEquals(missing, thin.missing(), 1e-12);
    assertEquals(grindArea, thin.grindArea(), 1e-6);
    assertEquals(grindVolume, thin.grindVolume(), 1e-8);
  }
}
