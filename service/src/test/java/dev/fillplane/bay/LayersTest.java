package dev.fillplane.bay;

import static dev.fillplane.bay.TestRooms.BUCKETS;
import static dev.fillplane.bay.TestRooms.exit;
import static dev.fillplane.bay.TestRooms.rectangle;
import static dev.fillplane.bay.TestRooms.room;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.depth.DepthField;
import dev.fillplane.room.Room;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.Surface;
import dev.fillplane.target.Plane;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

class LayersTest {

  private static final Room HALL = TestRooms.hall();

  @Test
  void evenFloorIsOnePass() {
    assertEquals(1, Layers.of(field(HALL, (x, y) -> -0.010), List.of(0.010)).size());
    // A wedge is deep at one end, but has no pocket.
    assertEquals(1, Layers.of(field(HALL, (x, y) -> -0.005 * x), List.of(0.030)).size());
  }

  /** Common practice, no source: deep pockets first, as a pass of their own. */
  @Test
  void pocketComesFirstOnItsOwn() {
    DepthField field = field(HALL, (x, y) -> -0.006 - dish(x - 4.5, y - 2));
    BayPlan plan = plan(HALL, field, List.of(0.026));
    assertEquals(List.of("hall pocket 1", "hall"), names(plan));
    assertTrue(plan.bays().get(0).pocket());
    assertEquals(1, plan.bays().get(0).lift());
    assertEquals(1, plan.bays().get(1).lift());
    assertVolumesAddUp(field, plan);
    // Over the pocket the last pass is as deep as the level under which the pocket was filled.
    double level = Math.max(2 * field.mean(), field.mean() + 0.010);
    assertEquals(level, plan.bays().get(1).depth().at(4.5, 2), 1e-9);
    assertEquals(field.at(4.5, 2) - level, plan.bays().get(0).depth().at(4.5, 2), 1e-9);
    assertEquals(field.at(1, 1), plan.bays().get(1).depth().at(1, 1), 1e-9);
  }

  /** The travel follows the exit also where the deep part is at the door. */
  @Test
  void pocketAtTheDoorIsLeftByTheDoor() {
    DepthField field = field(HALL, (x, y) -> -0.006 - dish(x - 0.5, y - 1.5));
    BayPlan plan = plan(HALL, field, List.of(0.026));
    assertEquals(List.of("hall pocket 1", "hall"), names(plan));
    Bay pocket = plan.bays().get(0);
    assertEquals(0, pocket.wayOut().x(), 1e-9);
    assertEquals(-1, pocket.travel().x(), 1e-9);
    WalkCheck.assertNobodyIsWalledIn(List.of(HALL), plan);
    assertVolumesAddUp(field, plan);
  }

  /** The far pocket comes before the near one; each is left toward the exit. */
  @Test
  void farPocketComesBeforeTheNearOne() {
    Room street = room("street", rectangle(0, 0, 12, 3), exit(12, 1, 12, 2));
    DepthField field =
        field(street, (x, y) -> -0.006 - dish(x - 9, y - 1.5) - dish(x - 3, y - 1.5));
    BayPlan plan = plan(street, field, List.of(0.026));
    assertEquals(List.of("street pocket 1", "street pocket 2", "street"), names(plan));
    assertTrue(plan.bays().get(0).polygon().getCentroid().getX() < 4);
    assertTrue(plan.bays().get(1).polygon().getCentroid().getX() > 8);
    plan.bays().forEach(bay -> assertEquals(1, bay.travel().x(), 1e-9));
    assertVolumesAddUp(field, plan);
  }

  @Test
  void liftsFillTheDeepPartFromTheBottom() {
    // 6 to 66 mm deep: 26 + 20 + 20 mm.
    DepthField field = field(HALL, (x, y) -> -0.006 - 3 * dish(x - 4.5, y - 2));
    BayPlan plan = plan(HALL, field, List.of(0.026, 0.020, 0.020));
    assertEquals(
        List.of("hall pocket 1 1", "hall pocket 2 2", "hall 3"),
        plan.bays().stream().map(bay -> bay.id() + " " + bay.lift()).toList());
    double[] areas = plan.bays().stream().mapToDouble(bay -> bay.polygon().getArea()).toArray();
    assertTrue(areas[0] < areas[1] && areas[1] < areas[2]);
    assertEquals(0.026, plan.bays().get(0).depth().at(4.5, 2), 1e-4);
    assertEquals(0.020, plan.bays().get(1).depth().at(4.5, 2), 1e-9);
    assertEquals(0.020, plan.bays().get(2).depth().at(4.5, 2), 1e-9);
    assertVolumesAddUp(field, plan);
  }

  @Test
  void smallOrShallowPocketsAreNoPass() {
    assertEquals(
        1, Layers.of(field(HALL, (x, y) -> -0.006 - dish(4 * x - 16, 4 * y - 8)), one()).size());
    assertEquals(
        1, Layers.of(field(HALL, (x, y) -> -0.006 - 0.6 * dish(x - 4.5, y - 2)), one()).size());
  }

  private static List<Double> one() {
    return List.of(0.026);
  }

  /** 20 mm deep in the middle, nothing 1.2 m beside it. */
  private static double dish(double x, double y) {
    return 0.020 * Math.max(0, 1 - (x * x + y * y) / 1.44);
  }

  private static DepthField field(Room room, DoubleBinaryOperator floor) {
    Surface surface =
        new Surface() {
          @Override
          public double elevation(double x, double y) {
            return floor.applyAsDouble(x, y);
          }

          @Override
          public double deviation(double x, double y) {
            return 0.001;
          }
        };
    return DepthField.of(FloorSample.of(List.of(room), surface, 0.1), new Plane(0, 0, 0));
  }

  private static BayPlan plan(Room room, DepthField field, List<Double> thicknesses) {
    return BayPlan.of(List.of(room), List.of(), Layers.of(field, thicknesses), BUCKETS);
  }

  private static List<String> names(BayPlan plan) {
    return plan.bays().stream().map(Bay::id).toList();
  }

  private static void assertVolumesAddUp(DepthField field, BayPlan plan) {
    double poured = plan.bays().stream().mapToDouble(bay -> bay.fill().volume()).sum();
    assertEquals(field.volume(), poured, 1e-6 * field.volume());
    plan.bays().forEach(TileCheck::assertTiles);
  }
}
