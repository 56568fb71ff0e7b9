package dev.fillplane.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** No text of a map touches a wall: its box is off the line of the wall by more than half of it. */
class OffWallsTest {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final double OFF = RoomLayer.WALL / 2 + 1;

  @Test
  void onMapsOfEveryKind() {
    for (Planned planned : Kinds.ALL) {
      for (Frame frame : List.of(Frame.SCREEN, frame(planned))) {
        Labels labels =
            new DepthMap(planned.request(), planned.plan(), Layer.USUAL, frame).labels();
        List<LineString> walls = walls(planned, Layout.of(planned.request().rooms(), frame).view());
        assertEquals(List.of(), onWalls(labels.placed(), walls), Kinds.name(planned));
      }
    }
  }

  @Test
  void whereThingsAreSetOut() {
    for (UnitSystem units : UnitSystem.values()) {
      for (Planned planned :
          List.of(
              PlannedFloors.of("ell", Floors.ell(), units),
              PlannedFloors.of("passage", Floors.passage(), units),
              PlannedFloors.of("thirty", Floors.thirty(), units),
              PlannedFloors.deep(units))) {
        Paper paper = Paper.usual(units);
        PageInput input = PageInput.of(planned.request(), planned.plan(), paper, ReadPage.WORDING);
        SetOutMap map = SetOutMap.of(input);
        List<Label> placed = map.labels().placed();
        assertEquals(List.of(), onWalls(placed, walls(planned, map.view())), Kinds.name(planned));
        for (int i = 1; i <= planned.plan().pins().size(); i++) {
          String pin = "P" + i;
          assertTrue(placed.stream().anyMatch(label -> label.text().equals(pin)), pin);
        }
      }
    }
  }

  private static Frame frame(Planned planned) {
    Paper paper = Paper.usual(planned.request().units());
    return Frame.page(Layout.extent(planned.request().rooms()), paper);
  }

  private static List<String> onWalls(List<Label> labels, List<LineString> walls) {
    List<String> touching = new ArrayList<>();
    for (Label label : labels) {
      Envelope box = label.box();
      box.expandBy(OFF);
      if (walls.stream().anyMatch(GEOMETRY.toGeometry(box)::intersects)) {
        touching.add(label.text() + " at " + label.x() + ", " + label.y());
      }
    }
    return touching;
  }

  private static List<LineString> walls(Planned planned, View view) {
    List<LineString> walls = new ArrayList<>();
    for (Room room : planned.request().rooms()) {
      for (List<Position> ring : room.outline().rings()) {
        Coordinate[] points =
            ring.stream().map(p -> view.at(p.x(), p.y())).toArray(Coordinate[]::new);
        walls.add(GEOMETRY.createLineString(points));
      }
    }
    return walls;
  }
}
