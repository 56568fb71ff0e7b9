package dev.fillplane.render;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Room;
import java.io.IOException;
import java.util.List;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The sheet as PDF, read back by PDFBox. */
class PourSheetTest {

  private static final Planned METRIC =
      PlannedFloors.of("three", Floors.twoRoomsAndPassage(), UnitSystem.METRIC);
  private static final byte[] SHEET = sheet(METRIC);

  /** What the page says is what the sheet says, in the same order; blanks and line ends aside. */
  @Test
  void saysWhatThePageSays() throws Exception {
    ReadPage page = ReadPage.of(METRIC);
    String sheet = words(text(SHEET));
    int at = 0;
    for (String heading : page.texts("h2")) {
      int next = sheet.indexOf(words(heading), at);
      assertTrue(next >= 0, heading);
      at = next;
    }
    for (String kind : List.of("h1", "li", "td", "th", "caption", "p")) {
      for (String part : page.texts(kind)) {
        assertTrue(sheet.contains(words(part)), kind + ": " + part);
      }
    }
  }

  @Test
  void everyPageHasItsFootAndNumber() throws Exception {
    try (PDDocument document = Loader.loadPDF(SHEET)) {
      int pages = document.getNumberOfPages();
      assertTrue(pages >= 4, "pages " + pages);
      for (int i = 1; i <= pages; i++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(i);
        stripper.setEndPage(i);
        String page = words(stripper.getText(document));
        assertTrue(page.contains("0123456789abcdef"), "page " + i);
        assertTrue(page.contains(i + "of" + pages), "page " + i);
      }
    }
  }

  @Test
  void isTaggedAndSaysWhatItIs() throws IOException {
    try (PDDocument document = Loader.loadPDF(SHEET)) {
      assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
      assertFalse(document.getDocumentCatalog().getStructureTreeRoot().getKids().isEmpty());
      assertEquals("en", document.getDocumentCatalog().getLanguage());
      assertEquals("Pour sheet: three", document.getDocumentInformation().getTitle());
    }
  }

  /** The picture of the map is told in words to those who do not see it. */
  @Test
  void mapHasAText() throws IOException {
    try (PDDocument document = Loader.loadPDF(SHEET)) {
      boolean told = false;
      for (var key : document.getDocument().getXrefTable().keySet()) {
        var object = document.getDocument().getObjectFromPool(key).getObject();
        if (object instanceof org.apache.pdfbox.cos.COSDictionary dictionary) {
          String alt = dictionary.getString(COSName.ALT);
          told |= alt != null && alt.startsWith("Plan of 3 rooms with the depth");
        }
      }
      assertTrue(told);
    }
  }

  @Test
  void fontsAreInIt() throws IOException {
    TreeSet<String> fonts = new TreeSet<>();
    try (PDDocument document = Loader.loadPDF(SHEET)) {
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertTrue(font.isEmbedded(), font.getName());
          fonts.add(font.getName().replaceAll("^[A-Z]{6}\\+", ""));
        }
      }
    }
    assertEquals(List.of("DejaVuSans", "DejaVuSans-Bold"), List.copyOf(fonts));
  }

  @Test
  void holdsNothingThatRunsOrLeadsAway() throws IOException {
    try (PDDocument document = Loader.loadPDF(SHEET)) {
      for (PDPage page : document.getPages()) {
        assertTrue(page.getAnnotations().isEmpty());
      }
      assertEquals(null, document.getDocumentCatalog().getOpenAction());
      assertEquals(null, document.getDocumentInformation().getCreationDate());
    }
  }

  @Test
  void isTheSameEveryTime() {
    assertArrayEquals(SHEET, sheet(METRIC));
  }

  /** The map stays on the first page. */
  @Test
  void aLongNameTakesNoPageMore() throws IOException {
    int pages = pages(sheet(PlannedFloors.of("flat", Floors.upright(), UnitSystem.US)));
    String name = "Building of a long name ".repeat(8);
    assertEquals(pages, pages(sheet(PlannedFloors.of(name, Floors.upright(), UnitSystem.US))));
  }

  private static int pages(byte[] sheet) throws IOException {
    try (PDDocument document = Loader.loadPDF(sheet)) {
      return document.getNumberOfPages();
    }
  }

  @Test
  void paper() throws IOException {
    assertSize(595.276, 841.89, SHEET);
    Planned us = PlannedFloors.of("closet", Floors.closet(), UnitSystem.US);
    assertSize(612, 792, sheet(us));
  }

  private static void assertSize(double width, double height, byte[] sheet) throws IOException {
    try (PDDocument document = Loader.loadPDF(sheet)) {
      for (PDPage page : document.getPages()) {
        assertEquals(width, page.getMediaBox().getWidth(), 0.1);
        assertEquals(height, page.getMediaBox().getHeight(), 0.1);
      }
    }
  }

  @Test
  void hostileNamesStayText() throws IOException {
    String name = "</p><img src=\"http://127.0.0.1:1/x\"/>&\u00E9\u03A9\u0416 \u4F60";
    Room room =
        Floors.room(name, List.of(Floors.exit(name, 1, 0, 2, 0)), Floors.rectangle(0, 0, 6, 4));
    String text = words(text(sheet(PlannedFloors.of(name, List.of(room), UnitSystem.METRIC))));
    assertTrue(text.contains("</p><imgsrc=\"http://127.0.0.1:1/x\"/>&\u00E9\u03A9\u0416"), text);
  }

  @Test
  void floorsOfEveryKind() throws IOException {
    for (Planned planned :
        List.of(
            PlannedFloors.dry(),
            PlannedFloors.deep(UnitSystem.US),
            PlannedFloors.of("upright", Floors.upright(), UnitSystem.US),
            PlannedFloors.of("ell", Floors.ell(), UnitSystem.METRIC))) {
      String text = words(text(sheet(planned)));
      assertTrue(
          text.contains("Bagstobuy") && text.contains("Safety"),
          planned.plan().reference().orElse(""));
    }
  }

  private static byte[] sheet(Planned planned) {
    Paper paper = Paper.usual(planned.request().units());
    return PourSheet.write(planned.request(), planned.plan(), paper, ReadPage.WORDING);
  }

  private static String text(byte[] sheet) throws IOException {
    try (PDDocument document = Loader.loadPDF(sheet)) {
      return new PDFTextStripper().getText(document);
    }
  }

  private static String words(String text) {
    return text.replaceAll("[\\s\u00A0]+", "");
  }
}
