package dev.fillplane.render;

import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Room;
import dev.fillplane.supply.Dam;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Gaps in the walls, exits with an arrow, and the dams across openings. */
final class OpeningLayer {

  private static final double HALF = RoomLayer.WALL / 2 + 1.5;
  private static final double DAM = 9;

  private final Sheet sheet;
  private final Markup svg = new Markup();
  private final List<Label> dams = new ArrayList<>();

  OpeningLayer(Sheet sheet) {
    this.sheet = sheet;
  }

  Markup draw() {
    for (int i = 0; i < sheet.rooms().size(); i++) {
      Room room = sheet.request().rooms().get(i);
      for (Opening opening : room.openings()) {
        Gap gap = Gap.of(sheet.view(), sheet.rooms().get(i), opening);
        gap(gap, opening.kind());
        dam(gap, room.id(), opening.id());
      }
    }
    return svg;
  }

  /** Heights of the dams. */
  void label() {
    dams.forEach(dam -> sheet.labels().beside(dam, 8));
  }

  private void gap(Gap gap, OpeningKind kind) {
    stroke(gap.line(0), "#fff", RoomLayer.WALL + 1);
    jamb(gap, 0);
    jamb(gap, 1);
    if (kind == OpeningKind.THRESHOLD) {
      stroke(gap.line(-1.5), "#111", 0.9);
      stroke(gap.line(1.5), "#111", 0.9);
    } else if (kind == OpeningKind.EXIT) {
      exit(gap);
    }
  }

  private void jamb(Gap gap, double along) {
    stroke(new PathData().line(gap.at(along, -HALF), gap.at(along, HALF)), "#111", 1.5);
  }

  private void exit(Gap gap) {
    Coordinate tip = gap.at(0.5, 30);
    Coordinate neck = gap.at(0.5, 18);
    Coordinate across = new Coordinate(-6 * gap.outY(), 6 * gap.outX());
    stroke(new PathData().line(gap.at(0.5, 6), neck), "#111", 4);
    Coordinate one = new Coordinate(neck.x + across.x, neck.y + across.y);
    Coordinate other = new Coordinate(neck.x - across.x, neck.y - across.y);
    svg.leaf("path", "fill", "#111", "d", new PathData().ring(one, tip, other, one));
    sheet.labels().block(gap.at(0.5, 6), tip, 6);
    name(gap);
  }

  /** Beside the arrow, outside the room if there is room. */
  private void name(Gap gap) {
    Label label = new Label("EXIT", 0, 0, Look.EXIT);
    double across =
        10 + Math.abs(gap.outY()) * label.width() / 2 + Math.abs(gap.outX()) * label.height() / 2;
    double out = Math.max(18, 6 + Math.abs(gap.outX()) * label.width() / 2);
    Coordinate middle = gap.at(0.5, out);
    Label one = label.movedTo(middle.x - across * gap.outY(), middle.y + across * gap.outX());
    Label other = label.movedTo(middle.x + across * gap.outY(), middle.y - across * gap.outX());
    if (!sheet.labels().place(one) && !sheet.labels().place(other)) {
      sheet.labels().near(label.movedTo(middle.x, middle.y), 9);
    }
  }

  private void dam(Gap gap, String room, String opening) {
    for (Dam dam : sheet.plan().quantities().dams()) {
      if (dam.room().equals(room) && dam.opening().equals(opening)) {
        stroke(gap.line(-DAM), "#fff", 9);
        stroke(gap.line(-DAM), "#111", 7);
        svg.leaf(
            "path",
            "fill",
            "none",
            "stroke",
            "#fff",
            "stroke-width",
            3,
            "stroke-dasharray",
            "5 5",
            "d",
            gap.line(-DAM));
        sheet.labels().block(gap.at(0, -DAM), gap.at(1, -DAM), 5);
        Coordinate middle = gap.at(0.5, -DAM);
        String text = "dam " + sheet.heights().bare(dam.height());
        dams.add(new Label(text, middle.x, middle.y, Look.DAM));
      }
    }
  }

  private void stroke(PathData line, String colour, double width) {
    svg.leaf("path", "fill", "none", "stroke", colour, "stroke-width", width, "d", line);
  }
}
