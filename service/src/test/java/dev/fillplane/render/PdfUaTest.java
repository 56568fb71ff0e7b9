package dev.fillplane.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.quantity.UnitSystem;
import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Sheets are what PDF/UA-1 (ISO 14289-1:2014) wants of them, as far as a machine can tell. */
class PdfUaTest {

  @BeforeAll
  static void start() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  @Test
  void roomsWithPins() throws Exception {
    assertAccessible(PlannedFloors.of("three", Floors.twoRoomsAndPassage(), UnitSystem.METRIC));
  }

  @Test
  void railsAndLateEdges() throws Exception {
    assertAccessible(PlannedFloors.deep(UnitSystem.US));
  }

  @Test
  void turnedPage() throws Exception {
    assertAccessible(PlannedFloors.of("passage", Floors.passage(), UnitSystem.METRIC));
  }

  @Test
  void nothingToPour() throws Exception {
    assertAccessible(PlannedFloors.dry());
  }

  /** A Chinese, an Arabic and a Thai name, the last without letters. */
  @Test
  void namesInOtherScripts() throws Exception {
    String name = "\u4F1A\u8BAE \u0642\u0627\u0639\u0629 7 \u0E2B\u0E49\u0E2D\u0E07";
    assertAccessible(PlannedFloors.of(name, Floors.closet(), UnitSystem.METRIC));
  }

  private static void assertAccessible(Planned planned) throws Exception {
    Paper paper = Paper.usual(planned.request().units());
    byte[] sheet = PourSheet.write(planned.request(), planned.plan(), paper, ReadPage.WORDING);
    try (PDFAParser parser =
        Foundries.defaultInstance()
            .createParser(new ByteArrayInputStream(sheet), PDFAFlavour.PDFUA_1)) {
      ValidationResult result =
          Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false).validate(parser);
      assertTrue(result.getTotalAssertions() > 1000, "checks " + result.getTotalAssertions());
      assertEquals(List.of(), List.copyOf(failures(result)));
    }
  }

  private static TreeSet<String> failures(ValidationResult result) {
    TreeSet<String> failures = new TreeSet<>();
    for (TestAssertion assertion : result.getTestAssertions()) {
      if (assertion.getStatus() == TestAssertion.Status.FAILED) {
        failures.add(
            assertion.getRuleId().getClause()
                + "-"
                + assertion.getRuleId().getTestNumber()
                + " "
                + assertion.getMessage());
      }
    }
    return failures;
  }
}
