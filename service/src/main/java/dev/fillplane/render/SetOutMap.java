package dev.fillplane.render;

import dev.fillplane.bay.Joint;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import dev.fillplane.screed.Pin;
import dev.fillplane.screed.Rail;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;

/** Where the numbered pins and rails, the dams and the joints of the tables stand. */
final class SetOutMap {

  private static final double WIDTH = 780;
  private static final double HIGHEST = 560;
  private static final double LARGEST_SCALE = 120;
  private static final double SMALLEST_EXTENT = 0.01;

  /** Where on a rail its number may stand. */
  private static final double[] ALONG = {0.5, 0.4, 0.6, 0.25, 0.75};

  private final PageInput input;
  private final Sheet sheet;
  private final double height;
  private final Markup map = new Markup();

  private SetOutMap(PageInput input) {
    this.input = input;
    Envelope extent = Layout.extent(input.request().rooms());
    double across = Math.max(SMALLEST_EXTENT, extent.getWidth());
    double down = Math.max(SMALLEST_EXTENT, extent.getHeight());
    double most = Math.min((WIDTH - 2 * Sheet.MARGIN) / across, HIGHEST / down);
    double scale = Math.min(LARGEST_SCALE, most);
    View view = new View(extent, scale, (WIDTH - across * scale) / 2, Sheet.MARGIN);
    height = Math.ceil(down * scale + 2 * Sheet.MARGIN);
    Envelope area = new Envelope(0, WIDTH, 0, height);
    sheet = Sheet.of(input.request(), input.plan(), view, area, Set.of());
  }

  /** As large as fits into a box, mm. */
  static Markup onPage(PageInput input, double width, double height) {
    return of(input).document(width, height);
  }

  static SetOutMap of(PageInput input) {
    SetOutMap map = new SetOutMap(input);
    map.rooms();
    OpeningLayer openings = new OpeningLayer(map.sheet);
    map.map.add(openings.draw());
    map.joints();
    map.guides();
    RoomLayer.name(map.sheet);
    map.numbers();
    openings.label();
    return map;
  }

  Labels labels() {
    return sheet.labels();
  }

  View view() {
    return sheet.view();
  }

  /** Walls, and islands grey. */
  private void rooms() {
    for (Room room : input.request().rooms()) {
      List<List<Position>> rings = room.outline().rings();
      for (int i = 0; i < rings.size(); i++) {
        PathData ring = new PathData().ring(sheet.view(), rings.get(i));
        String fill = i == 0 ? "#fff" : "#bbb";
        map.leaf("path", "d", ring, "fill", fill, "stroke", "#111", "stroke-width", RoomLayer.WALL);
        RoomLayer.block(sheet, rings.get(i));
      }
    }
  }

  private void joints() {
    for (Joint joint : input.plan().pour().joints()) {
      Coordinate from = at(joint.from());
      Coordinate to = at(joint.to());
      Symbols.joint(map, from, to);
      sheet.labels().block(from, to, 4);
    }
  }

  private void guides() {
    for (Rail rail : input.plan().rails()) {
      Symbols.rail(map, at(rail.from()), at(rail.to()));
      sheet.labels().block(at(rail.from()), at(rail.to()), 4);
    }
    for (Pin pin : input.plan().pins()) {
      Coordinate at = at(new Position(pin.x(), pin.y()));
      Symbols.pin(map, at.x, at.y);
      sheet.labels().block(at.x, at.y, 4.5);
    }
  }

  private void numbers() {
    for (Rail rail : input.plan().rails()) {
      number(rail);
    }
    for (int i = 0; i < input.plan().pins().size(); i++) {
      Pin pin = input.plan().pins().get(i);
      sheet.labels().near(sheet.label("P" + (i + 1), pin.x(), pin.y(), Look.GUIDE), 5);
    }
  }

  /** On the rail itself, in its middle if there is room. */
  private void number(Rail rail) {
    LineSegment line = new LineSegment(at(rail.from()), at(rail.to()));
    for (double share : ALONG) {
      Coordinate at = line.pointAlong(share);
      Label label = new Label("R" + rail.id(), at.x, at.y, Look.RAIL);
      if (sheet.labels().place(label, Labels.Over.SYMBOLS)) {
        return;
      }
    }
    Coordinate middle = line.midPoint();
    sheet.labels().near(new Label("R" + rail.id(), middle.x, middle.y, Look.RAIL), 6);
  }

  private Coordinate at(Position position) {
    return sheet.view().at(position.x(), position.y());
  }

  private Markup document(double mostAcross, double mostDown) {
    PictureSize size = PictureSize.within(mostAcross, mostDown, WIDTH, height);
    Markup svg =
        size.open(
            Paper.FONTS, WIDTH, height, "set-out", "Where pins, rails and dams stand", told());
    svg.add(map).add(sheet.labels().write());
    return svg.close("svg");
  }

  private String told() {
    return "Plan with the pins (P), rails (R), dams and joints of the tables. Pins: "
        + input.plan().pins().size()
        + ", rails: "
        + input.plan().rails().size()
        + ", dams: "
        + input.plan().quantities().dams().size()
        + ".";
  }
}
