package dev.fillplane.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Room;
import dev.fillplane.target.Plane;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class DepthMapTest {

  private static final String HOSTILE =
      "<script>alert('1')</script> \"&amp;\" ]]> \u202Eabc\u0000\u200F" + "x".repeat(40);

  /** Every kind of floor, in both systems of units. */
  private static final List<Planned> ALL = wishes().stream().map(Planned::of).toList();

  private static List<Planned.Wish> wishes() {
    List<Planned.Wish> wishes = new ArrayList<>();
    for (UnitSystem units : UnitSystem.values()) {
      wishes.add(Planned.wish(Floors.rectangleWithIsland()).in(units));
      wishes.add(Planned.wish(Floors.ell()).under(new Plane(0.004, 0.0005, -0.0003)).in(units));
      wishes.add(Planned.wish(Floors.passage()).in(units));
      wishes.add(Planned.wish(Floors.upright()).in(units));
      wishes.add(Planned.wish(Floors.closet()).in(units));
      wishes.add(Planned.wish(Floors.twoRoomsAndPassage()).under(Plane.level(0)).in(units));
      wishes.add(Planned.wish(Floors.rectangleWithIsland()).under(Plane.level(0.034)).in(units));
      wishes.add(Planned.wish(Floors.thirty()).withCell(0.4).in(units));
    }
    return wishes;
  }

  @Test
  void isAnImageThatExplainsItself() throws Exception {
    Picture picture = Picture.of(Planned.of(Planned.wish(Floors.rectangleWithIsland())));
    assertEquals("svg", picture.root().getLocalName());
    assertEquals("http://www.w3.org/2000/svg", picture.root().getNamespaceURI());
    assertEquals("img", picture.root().getAttribute("role"));
    assertEquals(
        "Depth map: sample floor (invented)", picture.all("title").get(0).getTextContent());
    String description = picture.all("desc").get(0).getTextContent();
    assertTrue(description.startsWith("Plan of 1 room with the depth"), description);
    assertTrue(description.contains("Rooms: hall"), description);
  }

  @Test
  void pagesAreReadableInSize() throws Exception {
    for (Planned planned : ALL) {
      double[] box = Picture.of(planned).box();
      assertEquals(1100, box[2]);
      assertTrue(box[3] > 350 && box[3] < 1900, name(planned) + " " + box[3]);
    }
  }

  @Test
  void everyNumberIsFinite() {
    for (Planned planned : ALL) {
      String svg = draw(planned);
      assertFalse(svg.contains("NaN") || svg.contains("Infinity"), name(planned));
    }
  }

  @Test
  void noTextIsSmallerThanNinePixels() throws Exception {
    for (Planned planned : ALL) {
      for (Element text : Picture.of(planned).all("text")) {
        assertTrue(Double.parseDouble(text.getAttribute("font-size")) >= 9);
      }
    }
  }

  @Test
  void labelsDoNotOverlapAndStayOnTheMap() {
    for (Planned planned : ALL) {
      List<Label> labels = new DepthMap(planned.request(), planned.plan()).labels().placed();
      assertTrue(labels.size() > 8, "few labels: " + labels.size());
      for (int i = 0; i < labels.size(); i++) {
        assertTrue(labels.get(i).box().getMinX() >= 0 && labels.get(i).box().getMaxX() <= 1100);
        for (int j = 0; j < i; j++) {
          assertFalse(
              labels.get(i).box().intersects(labels.get(j).box()),
              labels.get(i) + " over " + labels.get(j));
        }
      }
    }
  }

  @Test
  void whatMattersMostIsAlwaysSaid() throws Exception {
    for (Planned planned : ALL) {
      List<String> texts = Picture.of(planned).texts();
      for (String start :
          List.of(
              "HIGH SPOT ",
              "LOW SPOT ",
              "EXIT",
              "Bags to order",
              "61",
              "likely 55",
              "Estimate. Local code")) {
        assertTrue(
            texts.stream().anyMatch(text -> text.startsWith(start)),
            start + " on " + name(planned));
      }
    }
  }

  @Test
  void firstAndLastRibbonOfTheFloorAreNumbered() throws Exception {
    Planned planned = Planned.of(Planned.wish(Floors.rectangleWithIsland()));
    List<String> texts = Picture.of(planned).texts();
    int last = planned.plan().pour().bays().get(0).ribbons().size();
    assertTrue(texts.contains("1") && texts.contains("" + last), texts.toString());
  }

  @Test
  void hostileNamesStayText() throws Exception {
    Room room =
        Floors.room(
            HOSTILE, List.of(Floors.exit(HOSTILE, 1, 0, 2, 0)), Floors.rectangle(0, 0, 6, 4));
    Planned planned = Planned.of(Planned.wish(List.of(room)).called(HOSTILE));
    Picture picture = Picture.of(planned);
    assertEquals(List.of(), picture.all("script"));
    String title = picture.all("title").get(0).getTextContent();
    assertTrue(
        title.startsWith("Depth map: <script>alert('1')</script> \"&amp;\" ]]> abcxxx"), title);
    double widest =
        picture.texts().stream().mapToDouble(t -> Lettering.width(t, 12)).max().orElse(0);
    assertTrue(widest < 700, "a long name is cut");
  }

  @Test
  void sixThousandCellsAreSmall() {
    Planned planned = Planned.of(Planned.wish(Floors.twoRoomsAndPassage()).under(Plane.level(0)));
    assertTrue(planned.plan().depth().grid().depths().length > 5900);
    int bytes = DepthMap.draw(planned.request(), planned.plan()).length();
    assertTrue(bytes < 300_000, bytes + " bytes");
  }

  @Test
  void isTheSameEveryTime() {
    for (Planned planned : ALL) {
      assertEquals(draw(planned), draw(planned));
    }
  }

  @Test
  void coloursEndAtTheContours() throws Exception {
    // A floor that falls 1 in 500 along x: depth 2 mm at x = 0, 14 mm at x = 6.
    Planned.Wish wish =
        new Planned.Wish(
            UnitSystem.METRIC,
            "ramp",
            List.of(
                Floors.room(
                    "ramp", List.of(Floors.exit("out", 1, 0, 2, 0)), Floors.rectangle(0, 0, 6, 4))),
            Plane.level(0.002),
            0.1,
            1,
            (x, y) -> -0.002 * x);
    Planned planned = Planned.of(wish);
    View view = Layout.of(wish.rooms()).view();
    List<Double> edges = new ArrayList<>();
    for (Element path : Picture.of(planned).all("path")) {
      if (path.getParentNode() instanceof Element group && group.hasAttribute("clip-path")) {
        edges.add(least(path.getAttribute("d")));
      }
    }
    // Classes from 4, 6, ... 12 mm begin at x = 1, 2, ... 5 m.
    assertEquals(5, edges.size(), edges.toString());
    for (int i = 0; i < 5; i++) {
      assertEquals(view.x(i + 1), edges.get(i), 0.2);
    }
  }

  private static double least(String path) {
    Matcher matcher = Pattern.compile("[ML](-?[0-9.]+) ").matcher(path);
    double least = Double.POSITIVE_INFINITY;
    while (matcher.find()) {
      least = Math.min(least, Double.parseDouble(matcher.group(1)));
    }
    return least;
  }

  @Test
  void legendNamesOnlyWhatIsThere() throws Exception {
    List<String> thin = Picture.of(Planned.of(Planned.wish(Floors.ell()))).texts();
    assertTrue(thin.contains("depth pin, height in mm"));
    assertFalse(thin.contains("screed rail, heights in mm"));
    assertFalse(thin.contains("not poured: floor at target or above"));
    Planned.Wish deep = Planned.wish(Floors.rectangleWithIsland()).under(Plane.level(0.034));
    List<String> thick = Picture.of(Planned.of(deep)).texts();
    assertFalse(thick.contains("depth pin, height in mm"));
    assertTrue(thick.contains("screed rail, heights in mm"));
    assertTrue(thick.contains("30 to 35 mm") && !thick.contains("0 to 5 mm"), thick.toString());
  }

  private static String name(Planned planned) {
    return planned.request().rooms().get(0).id();
  }

  private static String draw(Planned planned) {
    return DepthMap.draw(planned.request(), planned.plan());
  }
}
