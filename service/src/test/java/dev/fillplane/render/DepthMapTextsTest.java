package dev.fillplane.render;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.pour.PouredBay;
import dev.fillplane.pour.Ribbon;
import dev.fillplane.target.Plane;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class DepthMapTextsTest {

  @Test
  void noTextIsSmallerThanNinePixels() throws Exception {
    for (Planned planned : Kinds.ALL) {
      for (Element text : Picture.of(planned).all("text")) {
        assertTrue(Double.parseDouble(text.getAttribute("font-size")) >= 9);
      }
    }
  }

  @Test
  void labelsDoNotOverlapAndStayOnTheMap() {
    for (Planned planned : Kinds.ALL) {
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
    for (Planned planned : Kinds.ALL) {
      List<String> texts = Picture.of(planned).texts();
      for (String start :
          List.of(
              "HIGH ",
              "LOW ",
              "EXIT",
              "Bags to order",
              "61",
              "likely 55",
              "Estimate. Local code")) {
        assertTrue(
            texts.stream().anyMatch(text -> text.startsWith(start)),
            start + " on " + Kinds.name(planned));
      }
    }
  }

  @Test
  void firstAndLastRibbonOfEveryBayAreNumbered() throws Exception {
    for (Planned planned : Kinds.ALL) {
      List<String> texts = Picture.of(planned).texts();
      for (PouredBay bay : planned.plan().pour().bays()) {
        List<Ribbon> ribbons = bay.ribbons();
        assertTrue(texts.contains("" + ribbons.get(0).order()), Kinds.name(planned));
        int last = ribbons.get(ribbons.size() - 1).order();
        assertTrue(texts.contains("" + last), Kinds.name(planned) + " " + last);
      }
    }
  }

  @Test
  void legendNamesOnlyWhatIsThere() throws Exception {
    List<String> thin = Picture.of(Planned.of(Wish.over(Floors.ell()))).texts();
    assertTrue(thin.contains("depth pin, height in mm"));
    assertFalse(thin.contains("screed rail, heights in mm"));
    assertFalse(thin.contains("not poured: floor at target or above"));
    Wish deep = Wish.over(Floors.rectangleWithIsland()).under(Plane.level(0.034));
    List<String> thick = Picture.of(Planned.of(deep)).texts();
    assertFalse(thick.contains("depth pin, height in mm"));
    assertTrue(thick.contains("screed rail, heights in mm"));
    assertTrue(thick.contains("30 to 35 mm") && !thick.contains("0 to 5 mm"), thick.toString());
  }
}
