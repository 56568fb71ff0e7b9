package dev.fillplane.surface;

import static dev.fillplane.surface.TestFloors.ISLAND;
import static dev.fillplane.surface.TestFloors.L_ROOM;
import static dev.fillplane.surface.TestFloors.RECTANGLE;
import static dev.fillplane.surface.TestFloors.crooked;
import static dev.fillplane.surface.TestFloors.moved;
import static dev.fillplane.surface.TestFloors.room;
import static dev.fillplane.surface.TestFloors.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.room.Position;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FloorCutterTest {

  private static final Position ABOUT = new Position(2.7, 1.9);
  private static final double STEP = 1e-7;

  private static FloorCutter cutter(FloorSample floor) {
    return floor.cutter(List.of(0), ABOUT);
  }

  private static double atOrigin(double level, double slopeX, double slopeY) {
    return level - slopeX * ABOUT.x() - slopeY * ABOUT.y();
  }

  /** Against the sums of clipped prisms, which are written apart from it. */
  @Test
  void cutsWhatThePrismsTell() {
    Random random = new Random(31);
    for (int i = 0; i < 20; i++) {
      FloorSample floor =
          sample(TestFloors::waves, 0.1 + 0.3 * random.nextDouble(), room("r", crooked(random)));
      double level = 0.006 * (random.nextDouble() - 0.5);
      double slopeX = 0.002 * (random.nextDouble() - 0.5);
      double slopeY = 0.002 * (random.nextDouble() - 0.5);
      PlaneCut cut = cutter(floor).cut(level, slopeX, slopeY);
      Prisms prisms = floor.under(atOrigin(level, slopeX, slopeY), slopeX, slopeY, 0);
      assertEquals(prisms.cutArea(), cut.area(), 1e-11);
      assertEquals(prisms.cutVolume(), cut.volume(), 1e-14);
    }
  }

  @Test
  void islandsAndOuterPartsCount() {
    FloorSample floor = sample(TestFloors::waves, 0.13, room("r", L_ROOM, ISLAND));
    FloorCutter cutter = cutter(floor);
    assertEquals(18 - 0.77, cutter.area(), 1e-10);
    assertEquals(floor.under(0, 0, 0, 0).cutVolume(), cutter.cut(0, 0, 0).volume(), 1e-14);
    PlaneCut all = cutter.cut(-1, 0, 0);
    assertEquals(cutter.area(), all.area(), 1e-10);
    assertEquals(cutter.momentX(), all.momentX(), 1e-10);
    assertEquals(cutter.volume() + cutter.area(), all.volume(), 1e-10);
  }

  /** The volume shrinks by area and moments as the plane rises and tilts, and they by the edge. */
  @Test
  void momentsAndEdgeAreTheSlopesOfWhatTheyShrink() {
    FloorCutter cutter = cutter(sample(TestFloors::waves, 0.13, room("r", L_ROOM, ISLAND)));
    double[] at = {0.0011, 0.0007, -0.0004};
    PlaneCut cut = cutter.cut(at[0], at[1], at[2]);
    double[] moments = {cut.area(), cut.momentX(), cut.momentY()};
    double[] edge = cut.edge();
    double[][] edges = {
      {edge[0], edge[1], edge[2]}, {edge[1], edge[3], edge[4]}, {edge[2], edge[4], edge[5]}
    };
    for (int i = 0; i < 3; i++) {
      double[] more = at.clone();
      double[] less = at.clone();
      more[i] += STEP;
      less[i] -= STEP;
      PlaneCut up = cutter.cut(more[0], more[1], more[2]);
      PlaneCut down = cutter.cut(less[0], less[1], less[2]);
      assertEquals(moments[i], (down.volume() - up.volume()) / (2 * STEP), 1e-4 * cut.area());
      // The edge takes the middle of its part in each triangle for all of it.
      assertEquals(edges[i][0], (down.area() - up.area()) / (2 * STEP), 2e-3 * edge[0]);
      assertEquals(edges[i][1], (down.momentX() - up.momentX()) / (2 * STEP), 2e-3 * edge[3]);
      assertEquals(edges[i][2], (down.momentY() - up.momentY()) / (2 * STEP), 2e-3 * edge[3]);
    }
  }

  @Test
  void someRoomsOnly() {
    double[] next = moved(RECTANGLE, 0, 6.5, 0);
    FloorSample floor =
        sample((x, y) -> x > 6.2 ? 0.01 : 0, 0.1, room("a", RECTANGLE), room("b", next));
    FloorCutter second = floor.cutter(List.of(1), ABOUT);
    assertEquals(24, second.area(), 1e-10);
    assertEquals(0.24, second.volume(), 1e-10);
    assertEquals(9.5, floor.centroid(List.of(1)).x(), 1e-10);
    assertEquals(0, floor.cutter(List.of(0), ABOUT).cut(0.001, 0, 0).area(), 1e-12);
    for (double x : floor.points(List.of(1)).x()) {
      assertEquals(true, x >= 6.5 - 1e-9);
    }
  }
}
