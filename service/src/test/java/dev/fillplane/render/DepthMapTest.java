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

  @Test
  void isAnImageThatExplainsItself() throws Exception {
    Picture picture = Picture.of(Planned.of(Wish.over(Floors.rectangleWithIsland())));
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
    for (Planned planned : Kinds.ALL) {
      double[] box = Picture.of(planned).box();
      assertEquals(1100, box[2]);
      assertTrue(box[3] > 350 && box[3] < 1900, Kinds.name(planned) + " " + box[3]);
    }
  }

  @Test
  void everyNumberIsFinite() {
    for (Planned planned : Kinds.ALL) {
      String svg = draw(planned);
      assertFalse(svg.contains("NaN") || svg.contains("Infinity"), Kinds.name(planned));
    }
  }

  @Test
  void hostileNamesStayText() throws Exception {
    Room room =
        Floors.room(
            HOSTILE, List.of(Floors.exit(HOSTILE, 1, 0, 2, 0)), Floors.rectangle(0, 0, 6, 4));
    Planned planned = Planned.of(Wish.over(List.of(room)).called(HOSTILE));
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
    Planned planned = Planned.of(Wish.over(Floors.twoRoomsAndPassage()).under(Plane.level(0)));
    assertTrue(planned.plan().depth().grid().depths().length > 5900);
    int bytes = DepthMap.draw(planned.request(), planned.plan()).length();
    assertTrue(bytes < 300_000, bytes + " bytes");
  }

  @Test
  void isTheSameEveryTime() {
    for (Planned planned : Kinds.ALL) {
      assertEquals(draw(planned), draw(planned));
    }
  }

  @Test
  void coloursEndAtTheContours() throws Exception {
    // A floor that falls 1 in 500 along x: depth 2 mm at x = 0, 14 mm at x = 6.
    Wish wish =
        new Wish(
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

  private static String draw(Planned planned) {
    return DepthMap.draw(planned.request(), planned.plan());
  }
}
