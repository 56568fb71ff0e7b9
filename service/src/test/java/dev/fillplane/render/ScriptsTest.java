package dev.fillplane.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.openhtmltopdf.bidi.BidiSplitter;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names in any script: written where the fonts have their letters, boxes and a word where not. */
class ScriptsTest {

  private static final String CHINESE = "\u4F1A\u8BAE\u5BA4";
  private static final String JAPANESE = "\u4F1A\u8B70\u5BA4\u30AB\u30CA";
  private static final String KOREAN = "\uD68C\uC758\uC2E4";
  private static final String HEBREW = "\u05D7\u05D3\u05E8";
  private static final String ARABIC = "\u0642\u0627\u0639\u0629";
  private static final String THAI = "\u0E2B\u0E49\u0E2D\u0E07";
  private static final String DEVANAGARI = "\u0915\u0915\u094D\u0937";
  private static final String TOOL = "\uD83D\uDD27";

  @Test
  void lettersOfTheFontsCanBeReadFromTheSheet() throws Exception {
    List<String> names = List.of(CHINESE, JAPANESE, KOREAN, HEBREW, ARABIC, "\u0416\u0443\u043A");
    String text = text(names);
    names.forEach(name -> assertTrue(text.contains(name), name));
    assertFalse(text.contains(Written.BOX));
    assertFalse(text.contains("has no font for"));
  }

  @Test
  void otherLettersAreBoxesAndTheFootSaysSo() throws Exception {
    String text = text(List.of("A" + THAI, "B" + DEVANAGARI, "C" + TOOL));
    // A mark above or below a letter has no box of its own.
    assertTrue(text.contains("A\u25AF\u25AF\u25AF\n") || text.contains("A\u25AF\u25AF\u25AF:"));
    assertTrue(text.contains("B\u25AF\u25AF\u25AF"), text);
    assertTrue(text.contains("C\u25AF"), text);
    assertTrue(text.contains("\u25AF stands for a letter that this print has no font for."));
    assertTrue(text.contains("(HTML) and in the plan"), text);
  }

  @Test
  void browsersGetEveryLetter() throws Exception {
    String html = ReadPage.html(planned(List.of(THAI, DEVANAGARI, TOOL)));
    assertTrue(html.contains(THAI) && html.contains(DEVANAGARI) && html.contains(TOOL));
    assertFalse(html.contains(Written.BOX));
  }

  /** The Unicode Standard, section 9.2, table 9-3: beh and alef; lam with alef is one letter. */
  @ParameterizedTest
  @CsvSource({
    "\u0628, \uFE8F",
    "\u0628\u0628, \uFE91\uFE90",
    "\u0628\u0628\u0628, \uFE91\uFE92\uFE90",
    "\u0628\u0627\u0628, \uFE91\uFE8E\uFE8F",
    "\u0644\u0627, \uFEFB",
    "\u0628\u0644\u0627, \uFE91\uFEFC",
    "\u0628\u064E\u0628, \uFE91\u064E\uFE90",
    "\u067E\u06CC, \uFB58\uFBFD",
    "hall, hall"
  })
  void arabicLettersJoin(String plain, String joined) {
    assertEquals(joined, ArabicForms.join(plain));
  }

  @Test
  void numbersAmongWordsToTheLeftKeepTheirOrder() {
    Leftwards leftwards = new Leftwards();
    assertEquals("12 \u05D1\u05D0", leftwards.reorderRTLTextToLTR("\u05D0\u05D1 12"));
    assertEquals("(\u05D1)", leftwards.reorderRTLTextToLTR("(\u05D1)"));
    TextRuns runs = new TextRuns();
    runs.setParagraph("room \u05D0\u05D1 12 \u05D2 east", BidiSplitter.LTR);
    assertEquals(3, runs.countTextRuns());
    assertEquals(5, runs.getVisualRun(1).getStart());
    assertEquals(7, runs.getVisualRun(1).getLength());
    assertEquals(BidiSplitter.RTL, runs.getVisualRun(1).getDirection());
  }

  private static Planned planned(List<String> names) {
    List<Room> rooms = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      rooms.add(Floors.room(names.get(i), List.of(), Floors.rectangle(3 * i, 0, 3 * i + 2, 2)));
    }
    return PlannedFloors.of(names.get(0), rooms, UnitSystem.METRIC);
  }

  private static String text(List<String> names) throws Exception {
    Planned planned = planned(names);
    byte[] sheet = PourSheet.write(planned.request(), planned.plan(), Paper.A4, ReadPage.WORDING);
    try (PDDocument document = Loader.loadPDF(sheet)) {
      return new PDFTextStripper().getText(document);
    }
  }
}
