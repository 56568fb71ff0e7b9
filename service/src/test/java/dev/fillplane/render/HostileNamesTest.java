package dev.fillplane.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Room;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names with every character that XML forbids, half pairs, and marks that turn the direction. */
class HostileNamesTest {

  private static final String FORBIDDEN = forbidden();
  private static final String NAME = "a" + FORBIDDEN + "b\uD83D" + "c\uDD27" + "</svg>&]]>\"'";
  private static final Planned PLANNED = planned();

  private static String forbidden() {
    StringBuilder all = new StringBuilder();
    for (int c = 0; c < 0x20; c++) {
      all.append((char) c);
    }
    for (int c = 0x7F; c < 0xA0; c++) {
      all.append((char) c);
    }
    return all.append(
            "\uFFFE\uFFFF\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069\u200E\u200F\u061C")
        .toString();
  }

  private static Planned planned() {
    Room room =
        Floors.room(NAME, List.of(Floors.exit(NAME, 1, 0, 2, 0)), Floors.rectangle(0, 0, 6, 4));
    return PlannedFloors.of(NAME, List.of(room), UnitSystem.METRIC);
  }

  /** That a parser reads them is half of the test. */
  @Test
  void picturesAndPagesAreXml() throws Exception {
    String map = DepthMap.draw(PLANNED.request(), PLANNED.plan());
    String timeline = PourTimeline.draw(PLANNED.request(), PLANNED.plan());
    for (String svg : List.of(map, timeline)) {
      assertClean(svg);
      assertFalse(new Picture(svg).texts().isEmpty());
    }
    assertClean(ReadPage.html(PLANNED));
    assertTrue(
        ReadPage.of(PLANNED)
            .texts("h1")
            .get(0)
            .replaceAll("\\s", "")
            .startsWith("abc</svg>&]]>\"'"));
  }

  @Test
  void sheetsTellTheName() throws Exception {
    byte[] sheet = PourSheet.write(PLANNED.request(), PLANNED.plan(), Paper.A4, ReadPage.WORDING);
    try (PDDocument document = Loader.loadPDF(sheet)) {
      assertTrue(document.getDocumentInformation().getTitle().contains("bc</svg>&]]>\"'"));
    }
  }

  @Test
  void rowsOfTablesStayRows() {
    String table = BatchList.of(PLANNED.plan().pour().batches(), UnitSystem.METRIC);
    assertClean(table.replace("\r\n", ""));
    assertEquals(
        PLANNED.plan().pour().batches().size() + 1, table.split("\r\n", -1).length - 1, table);
  }

  @Test
  void aNameOfNothingIsNoName() throws Exception {
    Planned planned = PlannedFloors.of("\u202E\u0000", Floors.closet(), UnitSystem.METRIC);
    assertEquals("Unnamed floor", ReadPage.of(planned).texts("h1").get(0));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+1",
        "-1",
        "@a",
        "\t=1",
        "\t@a",
        "\r=1",
        "\n-1",
        " =1",
        "\u00A0=1",
        "\u200B=1",
        "\u0000=1",
        "\uFEFF+1",
        "\u202E=1",
        "\uFF1D1"
      })
  void formulasAreDefused(String cell) {
    assertTrue(CellText.of(cell).startsWith("'"), cell);
  }

  @Test
  void otherCellsStayAsTheyAre() {
    assertEquals("hall 1-2 = x", CellText.of("hall 1-2 = x"));
    assertEquals(" two  lines", CellText.of("\ttwo\r\nlines"));
    assertEquals("", CellText.of(""));
  }

  private static void assertClean(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean blank = c == '\n' || c == '\t';
      assertTrue(blank || FORBIDDEN.indexOf(c) < 0, "U+" + Integer.toHexString(c) + " at " + i);
      assertFalse(Character.isSurrogate(c), "half a pair at " + i);
    }
  }
}
