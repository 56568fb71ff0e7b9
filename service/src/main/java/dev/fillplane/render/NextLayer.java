package dev.fillplane.render;

import dev.fillplane.surface.NextReading;
import java.util.List;

/** Places for more readings: dark numbered squares, the best first. */
final class NextLayer {

  static final double HALF = 8;

  private final Sheet sheet;
  private final List<NextReading> places;

  NextLayer(Sheet sheet) {
    this.sheet = sheet;
    this.places = sheet.shows(Layer.NEXT) ? sheet.plan().surface().nextReadings() : List.of();
  }

  boolean isEmpty() {
    return places.isEmpty();
  }

  Markup draw() {
    Markup svg = new Markup();
    for (int i = 0; i < places.size(); i++) {
      double x = sheet.view().x(places.get(i).x());
      double y = sheet.view().y(places.get(i).y());
      Symbols.next(svg, x, y, i + 1);
      sheet.labels().block(x, y, HALF + 1);
    }
    return svg;
  }
}
