package dev.fillplane.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.pour.Batch;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Room;
import dev.fillplane.safety.Note;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;

class PourPageTest {

  private static final String HOSTILE =
      "</td><script>alert('1')</script> \"&amp;\" ]]> \u202Eabc\u0000 \u00E9\u03A9\u0416";
  private static final Planned THREE =
      PlannedFloors.of("three", Floors.twoRoomsAndPassage(), UnitSystem.METRIC);

  @Test
  void pagesStandInOrder() throws Exception {
    ReadPage page = ReadPage.of(THREE);
    assertEquals(
        List.of("page first", "page order", "page set-out", "page care"), page.kinds("section"));
    assertEquals("three", page.all("h1").get(0).getTextContent());
    List<String> headings = page.texts("h2");
    assertEquals(
        List.of("Order of pouring", "Set out before the pour", "Safety"),
        headings.stream().filter(h -> h.matches("Order.*|Set out.*|Safety")).toList());
    assertTrue(headings.indexOf("Safety") < headings.indexOf("When something goes wrong"));
  }

  @Test
  void fiveNumbersThatMatter() throws Exception {
    List<String> numbers = ReadPage.of(THREE).inside("five", "strong");
    assertEquals(5, numbers.size());
    assertEquals("" + THREE.plan().quantities().bags().order(), numbers.get(0));
    assertEquals("5.0 L", numbers.get(1));
    assertEquals((int) (THREE.plan().mix().workingTime() / 60) + " min", numbers.get(2));
    assertEquals("4", numbers.get(3));
    assertEquals(THREE.plan().pour().bays().get(0).room(), numbers.get(4));
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void everyBatchIsARow(UnitSystem units) throws Exception {
    Planned planned = PlannedFloors.of("three", Floors.twoRoomsAndPassage(), units);
    List<Batch> batches = planned.plan().pour().batches();
    List<List<String>> rows = ReadPage.of(planned).rows("batches", "batch");
    assertEquals(batches.size(), rows.size());
    assertTrue(rows.size() > 20, "batches " + rows.size());
    for (int i = 0; i < rows.size(); i++) {
      Batch batch = batches.get(i);
      assertEquals("" + (i + 1), rows.get(i).get(0).replace(" \u25CB", ""));
      assertEquals("" + batch.number(), rows.get(i).get(1));
      assertEquals("" + batch.bags(), rows.get(i).get(2));
      assertEquals(Minutes.tenth(batch.placed()), rows.get(i).get(6));
      String edge = rows.get(i).get(9);
      assertEquals(batch.edgeAge().isPresent(), !edge.equals("-"), edge);
    }
  }

  @Test
  void edgesThatAreLateSaySo() throws Exception {
    double healing = THREE.plan().mix().healingTime();
    List<List<String>> rows = ReadPage.of(THREE).rows("batches", "batch");
    for (int i = 0; i < rows.size(); i++) {
      double age = THREE.plan().pour().batches().get(i).edgeAge().orElse(0);
      assertEquals(age > healing, rows.get(i).get(9).endsWith(" late"));
      assertEquals(age > 0.75 * healing && age <= healing, rows.get(i).get(9).endsWith(" tight"));
    }
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void everyPinHasItsHeight(UnitSystem units) throws Exception {
    Planned planned = PlannedFloors.of("three", Floors.twoRoomsAndPassage(), units);
    List<List<String>> rows = ReadPage.of(planned).rows("pins", "pin");
    List<String> heights = new ArrayList<>();
    planned.plan().pins().forEach(pin -> heights.add(new Heights(units).full(pin.height())));
    assertFalse(heights.isEmpty());
    assertEquals(
        heights.stream().sorted().toList(), rows.stream().map(row -> row.get(2)).sorted().toList());
    List<String> numbers = rows.stream().map(row -> row.get(0)).toList();
    for (int i = 1; i <= heights.size(); i++) {
      assertTrue(numbers.contains("P" + i) && ReadPage.of(planned).texts("text").contains("P" + i));
    }
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void everyRailHasItsStations(UnitSystem units) throws Exception {
    Planned planned = PlannedFloors.deep(units);
    List<String> heights = new ArrayList<>();
    planned
        .plan()
        .rails()
        .forEach(
            rail -> rail.stations().forEach(s -> heights.add(new Heights(units).full(s.height()))));
    assertFalse(heights.isEmpty());
    List<List<String>> rows = ReadPage.of(planned).rows("rails", "station");
    assertEquals(heights, rows.stream().map(row -> row.get(1)).toList());
  }

  @Test
  void everyDamAndJoint() throws Exception {
    ReadPage page = ReadPage.of(THREE);
    assertEquals(
        THREE.plan().quantities().dams().stream().map(dam -> dam.opening()).toList(),
        page.rows("dams", "dam").stream().map(row -> row.get(0)).toList());
    assertEquals(
        THREE.plan().pour().joints().stream().map(joint -> joint.bay()).toList(),
        page.rows("joints", "joint").stream().map(row -> row.get(0)).toList());
  }

  @Test
  void everyNoteTheGravestFirst() throws Exception {
    List<String> told = new ArrayList<>();
    THREE.plan().safety().stream()
        .sorted((a, b) -> a.severity().compareTo(b.severity()))
        .forEach(note -> told.add(note.severity() + " " + ReadPage.sentence(note.code())));
    assertTrue(told.size() > 3);
    List<String> shown = ReadPage.of(THREE).divisions("note");
    for (int i = 0; i < told.size(); i++) {
      assertTrue(shown.get(i).startsWith(told.get(i)), shown.get(i));
    }
    List<String> bases = THREE.plan().safety().stream().map(Note::basis).toList();
    bases.forEach(basis -> assertTrue(String.join("\n", shown).contains(basis), basis));
  }

  @Test
  void everyTroubleReasonChangeAndWarning() throws Exception {
    ReadPage page = ReadPage.of(THREE);
    List<String> codes = new ArrayList<>();
    THREE.plan().troubles().cases().forEach(trouble -> codes.add(trouble.now().code()));
    THREE.plan().troubles().cases().forEach(trouble -> codes.add(trouble.nextDay().code()));
    THREE.plan().pour().reasons().forEach(reason -> codes.add(reason.code()));
    THREE.plan().pour().changes().forEach(change -> codes.add(change.remark().code()));
    THREE.plan().warnings().forEach(warning -> codes.add(warning.code()));
    assertTrue(codes.size() > 10);
    codes.forEach(code -> assertTrue(page.text().contains(ReadPage.sentence(code)), code));
    assertEquals(THREE.plan().troubles().cases().size(), page.divisions("trouble").size());
    assertEquals(THREE.plan().troubles().stops().size(), page.rows("stops", "stop").size());
  }

  @Test
  void footTellsWhereTheNumbersComeFrom() throws Exception {
    List<String> feet = ReadPage.of(THREE).texts("footer");
    assertEquals(4, feet.size());
    for (String part :
        List.of("three", "9.8.7", "0123456789abcdef", "metric", "Estimate", "code")) {
      feet.forEach(foot -> assertTrue(foot.contains(part), foot));
    }
  }

  @Test
  void hostileNamesStayText() throws Exception {
    Room room =
        Floors.room(
            HOSTILE, List.of(Floors.exit(HOSTILE, 1, 0, 2, 0)), Floors.rectangle(0, 0, 6, 4));
    ReadPage page = ReadPage.of(PlannedFloors.of(HOSTILE, List.of(room), UnitSystem.US));
    assertEquals(List.of(), page.all("script"));
    String shown = "</td><script>alert('1')</script> \"&amp;\" ]]> abc \u00E9\u03A9\u0416";
    assertEquals(shown, page.all("h1").get(0).getTextContent());
    assertEquals(shown, page.rows("dams", "dam").get(0).get(0));
  }

  @Test
  void loadsAndRunsNothing() throws Exception {
    String html = ReadPage.html(THREE);
    for (String word : List.of("src=", "href=", "@import", "url(h", "<script", "<link", "onload")) {
      assertFalse(html.contains(word), word);
    }
    for (Element element : ReadPage.of(THREE).all("*")) {
      assertFalse(
          element.getLocalName().matches("img|object|iframe|image|use"), element.getLocalName());
    }
  }

  @Test
  void saysSoWhereNothingIsSetOut() throws Exception {
    ReadPage thin = ReadPage.of(PlannedFloors.of("closet", Floors.closet(), UnitSystem.METRIC));
    assertTrue(thin.text().contains("No screed rails in this pour."));
    ReadPage dry = ReadPage.of(PlannedFloors.dry());
    assertTrue(dry.text().contains("Nothing to pour."));
    assertTrue(dry.text().contains("No depth pins in this pour."));
    assertEquals(List.of(), dry.rows("batches", "batch"));
  }

  @Test
  void thirtyRooms() throws Exception {
    Planned planned = PlannedFloors.of("thirty", Floors.thirty(), UnitSystem.US);
    ReadPage page = ReadPage.of(planned);
    assertEquals(planned.plan().pour().batches().size(), page.rows("batches", "batch").size());
    assertEquals(planned.plan().pins().size(), page.rows("pins", "pin").size());
  }

  @Test
  void theSameWarningOfThirtyRoomsIsToldThreeTimes() throws Exception {
    Planned planned = PlannedFloors.of("thirty", Floors.thirty(), UnitSystem.US);
    String code = "substrate-unknown";
    long told =
        planned.plan().warnings().stream().filter(warning -> warning.code().equals(code)).count();
    assertEquals(30, told);
    List<String> items = ReadPage.of(planned).texts("li");
    assertEquals(3, items.stream().filter(ReadPage.sentence(code)::equals).count());
    assertTrue(
        items.contains("Warnings like the last one: 27 more; the plan (JSON) has them all."));
  }

  @Test
  void paperIsTurnedForAPassage() throws Exception {
    Planned passage = PlannedFloors.of("passage", Floors.passage(), UnitSystem.METRIC);
    assertEquals("page first turned", ReadPage.of(passage).kinds("section").get(0));
    Planned upright = PlannedFloors.of("upright", Floors.upright(), UnitSystem.METRIC);
    assertEquals("page first", ReadPage.of(upright).kinds("section").get(0));
  }

  @Test
  void paperByItsName() {
    assertTrue(ReadPage.html(THREE, Paper.A4).contains("@page { size: A4; }"));
    assertTrue(ReadPage.html(THREE, Paper.LETTER).contains("@page { size: letter; }"));
    assertEquals(Paper.A4, Paper.usual(UnitSystem.METRIC));
    assertEquals(Paper.LETTER, Paper.usual(UnitSystem.US));
  }
}
