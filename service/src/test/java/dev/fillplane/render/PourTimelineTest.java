package dev.fillplane.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.pour.Batch;
import dev.fillplane.pour.Task;
import dev.fillplane.pour.Worker;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class PourTimelineTest {

  private static final Planned THREE =
      PlannedFloors.of("three", Floors.twoRoomsAndPassage(), UnitSystem.METRIC);

  /** Every piece of work shows once in each row that it reaches into, at its time. */
  @Test
  void everyPieceOfWorkStandsAtItsTime() throws Exception {
    List<Stretch> rows = Stretch.of(THREE.plan().pour().totals().end());
    assertTrue(rows.size() > 1);
    List<double[]> wanted = new ArrayList<>();
    for (Stretch row : rows) {
      for (Worker worker : THREE.plan().pour().workers()) {
        for (Task task : worker.tasks()) {
          if (row.shows(task.from(), task.to())) {
            wanted.add(new double[] {row.x(task.from()), row.x(task.to())});
          }
        }
      }
    }
    List<Element> bars = of(THREE, "task");
    assertEquals(wanted.size(), bars.size());
    for (int i = 0; i < bars.size(); i++) {
      double x = number(bars.get(i), "x");
      assertEquals(wanted.get(i)[0], x, 0.01);
      assertEquals(wanted.get(i)[1], x + number(bars.get(i), "width"), 0.7);
    }
  }

  @Test
  void everyEdgeIsAsHighAsItIsOld() throws Exception {
    double healing = THREE.plan().mix().healingTime();
    List<Double> ages = new ArrayList<>();
    for (Batch batch : THREE.plan().pour().batches()) {
      batch.edgeAge().ifPresent(ages::add);
    }
    List<Element> columns = of(THREE, "edge");
    assertEquals(ages.size(), columns.size());
    double unit = number(columns.get(0), "height") / ages.get(0);
    for (int i = 0; i < ages.size(); i++) {
      String fill = columns.get(i).getAttribute("fill");
      double age = ages.get(i);
      assertEquals(age > healing ? "#111" : age > 0.75 * healing ? "#999" : "#fff", fill);
      assertEquals(unit * Math.min(age, 1.45 * healing), number(columns.get(i), "height"), 0.1);
    }
  }

  /** Bars of one person lie beside each other, and people do not share a lane. */
  @Test
  void barsDoNotOverlap() throws Exception {
    List<Element> bars = of(THREE, "task");
    for (int i = 1; i < bars.size(); i++) {
      if (number(bars.get(i), "y") == number(bars.get(i - 1), "y")) {
        double end = number(bars.get(i - 1), "x") + number(bars.get(i - 1), "width");
        assertTrue(number(bars.get(i), "x") >= end - 0.7, "bar " + i);
      }
    }
    assertTrue(bars.stream().map(bar -> bar.getAttribute("y")).distinct().count() >= 4);
  }

  /** A text in a bar is no wider than the bar. */
  @Test
  void textsFitTheirBars() throws Exception {
    double right = Stretch.RIGHT;
    for (Element text : new Picture(PourTimeline.draw(THREE.request(), THREE.plan())).all("text")) {
      double width = Lettering.width(text.getTextContent(), number(text, "font-size"));
      boolean middle = text.getAttribute("text-anchor").equals("middle");
      double end = number(text, "x") + (middle ? width / 2 : 0);
      assertTrue(!middle || end <= right + 25, text.getTextContent());
    }
  }

  @Test
  void clockWhereAStartIsTold() throws Exception {
    assertTrue(
        new Picture(PourTimeline.draw(THREE.request(), THREE.plan())).texts().contains("30"));
    Planned told = PlannedFloors.startingAt("07:30", THREE);
    List<String> texts = new Picture(PourTimeline.draw(told.request(), told.plan())).texts();
    assertTrue(texts.contains("07:30") && texts.contains("08:00"), texts.toString());
  }

  @Test
  void rowsCoverThePour() {
    for (double minutes : new double[] {0, 1, 20, 39, 41, 200, 361, 700, 1500, 5000}) {
      List<Stretch> rows = Stretch.of(60 * minutes);
      assertEquals(0, rows.get(0).from());
      assertTrue(rows.get(rows.size() - 1).to() >= 60 * minutes);
      assertTrue(rows.size() <= 12 || minutes > 12 * 240, minutes + ": " + rows.size());
      for (int i = 1; i < rows.size(); i++) {
        assertEquals(rows.get(i - 1).to(), rows.get(i).from());
      }
      double marks = (rows.get(0).to() - rows.get(0).from()) / rows.get(0).mark();
      assertEquals(Math.rint(marks), marks, 1e-9);
    }
  }

  @Test
  void hostileNamesStayText() throws Exception {
    String name = "\"><script>x</script>&\u202E";
    Room room =
        Floors.room(name, List.of(Floors.exit("out", 1, 0, 2, 0)), Floors.rectangle(0, 0, 6, 4));
    Planned planned = PlannedFloors.of(name, List.of(room), UnitSystem.US);
    Picture picture = new Picture(PourTimeline.draw(planned.request(), planned.plan()));
    assertEquals(List.of(), picture.all("script"));
    assertTrue(picture.texts().contains("\"><script>x</script>&"));
  }

  @Test
  void nothingToPourIsAPicture() throws Exception {
    Planned dry = PlannedFloors.dry();
    assertEquals(List.of(), of(dry, "task"));
    String svg = PourTimeline.draw(dry.request(), dry.plan());
    assertFalse(svg.contains("NaN"));
    assertEquals(svg, PourTimeline.draw(dry.request(), dry.plan()));
  }

  private static List<Element> of(Planned planned, String kind) throws Exception {
    return new Picture(PourTimeline.draw(planned.request(), planned.plan()))
        .all("rect").stream().filter(e -> e.getAttribute("class").equals(kind)).toList();
  }

  private static double number(Element element, String name) {
    return Double.parseDouble(element.getAttribute(name));
  }
}
