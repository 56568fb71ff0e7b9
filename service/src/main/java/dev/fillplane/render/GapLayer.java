package dev.fillplane.render;

import dev.fillplane.flatness.GapPlace;
import dev.fillplane.flatness.ListedGap;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Where a straightedge shows too large a gap on the floor as it is. */
final class GapLayer {

  private final Sheet sheet;
  private final List<ListedGap> gaps;

  GapLayer(Sheet sheet) {
    this.sheet = sheet;
    gaps = sheet.shows(Layer.GAPS) ? sheet.plan().flatness().gaps() : List.of();
  }

  boolean isEmpty() {
    return gaps.isEmpty();
  }

  Markup draw() {
    Markup svg = new Markup();
    for (ListedGap gap : gaps) {
      Symbols.edge(svg, at(gap.from()), at(gap.to()));
    }
    return svg;
  }

  void label() {
    for (ListedGap gap : gaps) {
      Coordinate at = at(gap.at());
      String text = "gap " + sheet.heights().full(gap.gap());
      sheet.labels().near(new Label(text, at.x, at.y, Look.GUIDE), 6);
    }
  }

  private Coordinate at(GapPlace place) {
    return sheet.view().at(place.x().orElseThrow(), place.y().orElseThrow());
  }
}
