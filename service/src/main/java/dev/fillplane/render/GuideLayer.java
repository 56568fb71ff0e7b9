package dev.fillplane.render;

import dev.fillplane.room.Position;
import dev.fillplane.screed.Pin;
import dev.fillplane.screed.Rail;
import dev.fillplane.screed.Station;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/** Depth pins and screed rails with the heights that they are set to. */
final class GuideLayer {

  private static final double FROM_END = 16;

  private final Sheet sheet;
  private final List<Rail> rails;
  private final List<Pin> pins;

  GuideLayer(Sheet sheet) {
    this.sheet = sheet;
    boolean shown = sheet.shows(Layer.GUIDES);
    rails = shown ? sheet.plan().rails() : List.of();
    pins = shown ? sheet.plan().pins() : List.of();
  }

  Markup draw() {
    Markup svg = new Markup();
    for (Rail rail : rails) {
      Coordinate from = point(rail.from());
      Coordinate to = point(rail.to());
      Symbols.rail(svg, from, to);
      sheet.labels().block(from, to, 4);
      rail.stations().forEach(station -> tick(svg, from, to, at(rail, station)));
    }
    for (Pin pin : pins) {
      Coordinate at = sheet.view().at(pin.x(), pin.y());
      Symbols.pin(svg, at.x, at.y);
      sheet.labels().block(at.x, at.y, 4.5);
    }
    return svg;
  }

  private static void tick(Markup svg, Coordinate from, Coordinate to, Coordinate at) {
    double length = Math.max(1e-9, from.distance(to));
    double acrossX = -6 * (to.y - from.y) / length;
    double acrossY = 6 * (to.x - from.x) / length;
    PathData line =
        new PathData()
            .line(
                new Coordinate(at.x - acrossX, at.y - acrossY),
                new Coordinate(at.x + acrossX, at.y + acrossY));
    Symbols.stroke(svg, line, "#111", 2);
  }

  /** Numbers at the ends of a rail stay off the walls. */
  private Coordinate inward(Rail rail, Coordinate at) {
    LineSegment line = new LineSegment(point(rail.from()), point(rail.to()));
    double off = Math.min(0.5, FROM_END / Math.max(1e-9, line.getLength()));
    double share = Math.max(off, Math.min(1 - off, line.segmentFraction(at)));
    return line.pointAlong(share);
  }

  private Coordinate point(Position position) {
    return sheet.view().at(position.x(), position.y());
  }

  private Coordinate at(Rail rail, Station station) {
    double length = Math.max(1e-9, rail.from().distance(rail.to()));
    double share = Math.max(0, Math.min(1, station.at() / length));
    return sheet
        .view()
        .at(
            rail.from().x() + share * (rail.to().x() - rail.from().x()),
            rail.from().y() + share * (rail.to().y() - rail.from().y()));
  }

  void label() {
    for (Rail rail : rails) {
      for (Station station : rail.stations()) {
        Coordinate at = inward(rail, at(rail, station));
        String text = sheet.heights().bare(station.height());
        sheet.labels().beside(new Label(text, at.x, at.y, Look.RAIL), 8);
      }
    }
    for (Pin pin : pins) {
      String text = sheet.heights().bare(pin.height());
      sheet.labels().beside(sheet.label(text, pin.x(), pin.y(), Look.GUIDE), 5);
    }
  }
}
