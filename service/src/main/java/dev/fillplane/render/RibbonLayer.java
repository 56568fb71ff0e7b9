package dev.fillplane.render;

import dev.fillplane.pour.PouredBay;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;

/** Ribbons of the last pass: dashed edges, order numbers, the direction of travel of each bay. */
final class RibbonLayer {

  private static final double ROOM_FOR_NUMBER = 26;
  private static final double[] SHIFTS = {0, 11, -11, 20, -20, 32, -32, 48, -48, 66, -66};
  private static final double[] LEANS = {0, 4, -4, 8, -8, 12, -12, 18, -18};

  /** Off the middle of a ribbon that its number does not fit on. */
  private static final double BESIDE = 2;

  private final Sheet sheet;
  private final List<List<Strip>> bays;
  private final int every;

  RibbonLayer(Sheet sheet) {
    this.sheet = sheet;
    bays =
        sheet.lastPass().stream()
            .filter(bay -> sheet.shows(Layer.RIBBONS) && !bay.ribbons().isEmpty())
            .map(this::strips)
            .toList();
    every = bays.stream().mapToInt(RibbonLayer::every).max().orElse(1);
  }

  private List<Strip> strips(PouredBay bay) {
    return bay.ribbons().stream().map(ribbon -> Strip.of(sheet.view(), ribbon)).toList();
  }

  /** So many ribbons apart there is room for numbers. */
  private static int every(List<Strip> bay) {
    double length = bay.get(0).middle().distance(bay.get(bay.size() - 1).middle());
    double pitch = length / Math.max(1, bay.size() - 1);
    return bay.size() < 2 || pitch >= ROOM_FOR_NUMBER
        ? 1
        : (int) Math.min(bay.size(), Math.ceil(ROOM_FOR_NUMBER / (pitch + 1e-9)));
  }

  boolean isEmpty() {
    return bays.isEmpty();
  }

  /** Every how many-th ribbon is numbered, besides the first and the last of a bay. */
  int every() {
    return every;
  }

  Markup draw() {
    Set<List<Long>> done = new LinkedHashSet<>();
    PathData path = new PathData();
    for (List<Strip> bay : bays) {
      bay.forEach(strip -> strip.rings().forEach(ring -> edges(ring, done, path)));
    }
    Markup svg = new Markup();
    if (!path.isEmpty()) {
      svg.leaf(
          "path",
          "fill",
          "none",
          "stroke",
          "#fff",
          "stroke-opacity",
          0.5,
          "stroke-width",
          1.8,
          "d",
          path);
      svg.leaf(
          "path",
          "fill",
          "none",
          "stroke",
          "#111",
          "stroke-width",
          0.8,
          "stroke-dasharray",
          "5 4",
          "d",
          path);
    }
    return svg;
  }

  /** Each edge once, or the dashes of two neighbours would fill each other's gaps. */
  private static void edges(Coordinate[] points, Set<List<Long>> done, PathData path) {
    for (int i = 1; i < points.length; i++) {
      boolean rising = points[i - 1].compareTo(points[i]) < 0;
      Coordinate from = rising ? points[i - 1] : points[i];
      Coordinate to = rising ? points[i] : points[i - 1];
      List<Long> key =
          List.of(Math.round(from.x), Math.round(from.y), Math.round(to.x), Math.round(to.y));
      if (done.add(key)) {
        path.line(from, to);
      }
    }
  }

  Markup arrows() {
    return TravelArrows.draw(sheet, bays);
  }

  /** First and last of all bays, before what matters less; at the worst over a symbol. */
  void numberEnds() {
    for (List<Strip> bay : bays) {
      numberSurely(bay.get(0));
      if (bay.size() > 1) {
        numberSurely(bay.get(bay.size() - 1));
      }
    }
  }

  private void numberSurely(Strip strip) {
    if (!number(strip, Labels.Over.NOTHING, true)
        && !number(strip, Labels.Over.SYMBOLS, true)
        && !number(strip, Labels.Over.SYMBOLS, false)) {
      sheet.labels().near(label(strip, strip.middle()), BESIDE);
    }
  }

  void numberOthers() {
    for (List<Strip> bay : bays) {
      for (int i = every; i < bay.size() - 1; i += every) {
        number(bay.get(i), Labels.Over.NOTHING, true);
      }
    }
  }

  /**
   * In the middle, or along the ribbon; where it is narrow, leaning to one side.
   *
   * @param within whether it may lean no further than that its middle is on the ribbon
   */
  private boolean number(Strip strip, Labels.Over over, boolean within) {
    for (double lean : LEANS) {
      for (double shift : SHIFTS) {
        Coordinate at = strip.at(shift, lean);
        boolean holds = strip.holds(within ? at : strip.at(shift, 0));
        if (holds && sheet.labels().place(label(strip, at), over)) {
          return true;
        }
      }
    }
    return false;
  }

  private static Label label(Strip strip, Coordinate at) {
    return new Label(Integer.toString(strip.order()), at.x, at.y, Look.RIBBON);
  }
}
