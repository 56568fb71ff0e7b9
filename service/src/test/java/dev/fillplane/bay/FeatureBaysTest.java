package dev.fillplane.bay;

import static dev.fillplane.bay.TestRooms.BUCKETS;
import static dev.fillplane.bay.TestRooms.doorway;
import static dev.fillplane.bay.TestRooms.exit;
import static dev.fillplane.bay.TestRooms.rectangle;
import static dev.fillplane.bay.TestRooms.room;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.room.Feature;
import dev.fillplane.room.FeatureKind;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

class FeatureBaysTest {

  private static final TiltedDepths TEN = TiltedDepths.even(0.010);

  @Test
  void movingJointDividesARoom() {
    BayPlan plan = plan(TestRooms.hall(), joint(3, 0, 3, 4));
    assertEquals(List.of("hall 1", "hall 2"), names(plan));
    // A form of 10 mm stands in the joint.
    assertEquals(24 - 4 * 0.010, area(plan), 1e-6);
    assertEquals(3.005, minX(plan.bays().get(0)), 1e-6);
    // The far part is left over the joint, the near one by the exit.
    assertEquals(3, plan.bays().get(0).wayOut().x(), 1e-9);
    assertEquals(0, plan.bays().get(1).wayOut().x(), 1e-9);
    assertTrue(plan.bays().stream().allMatch(Bay::leadsToExit));
    plan.bays().forEach(bay -> TileCheck.assertTiles(bay, TEN));
    Joint joint = plan.joints().get(0);
    assertEquals(1, plan.joints().size());
    assertEquals("hall 1", joint.bay());
    assertEquals(JointKind.MOVING_JOINT, joint.kind());
    assertEquals(4, joint.length(), 1e-9);
    assertEquals(0.010 + 0.010, joint.height(), 1e-9);
  }

  @Test
  void jointDrawnShortOfTheWallReachesIt() {
    assertEquals(2, plan(TestRooms.hall(), joint(3, 0.04, 3, 3.96)).bays().size());
    assertEquals(1, plan(TestRooms.hall(), joint(3, 0.06, 3, 3.96)).bays().size());
  }

  @Test
  void jointThatEndsInTheRoomIsNotBridged() {
    BayPlan plan = plan(TestRooms.hall(), joint(0, 2.5, 4, 2.5));
    assertEquals(List.of("hall"), names(plan));
    Bay bay = plan.bays().get(0);
    TileCheck.assertTiles(bay, TEN);
    LineString joint =
        new GeometryFactory()
            .createLineString(new Coordinate[] {new Coordinate(0, 2.5), new Coordinate(4, 2.5)});
    for (Strip strip : bay.strips()) {
      assertEquals(0, strip.polygon().intersection(joint).getLength(), 1e-6);
    }
    assertEquals(24 - 4 * 0.010, bay.fill().area(), 1e-6);
  }

  @Test
  void partsComeFarthestFirst() {
    BayPlan plan = plan(TestRooms.hall(), joint(2, 0, 2, 4), joint(4, 0, 4, 4));
    assertEquals(List.of("hall 1", "hall 2", "hall 3"), names(plan));
    assertEquals(4.005, minX(plan.bays().get(0)), 1e-6);
    assertEquals(2.005, minX(plan.bays().get(1)), 1e-6);
    assertEquals(
        List.of("hall 1", "hall 2"), plan.joints().stream().map(Joint::bay).sorted().toList());
  }

  @Test
  void drainStaysOpen() {
    Bay bay = plan(TestRooms.hall(), drain(3, 2, 0.15)).bays().get(0);
    // 3 cm more on each side for tape and form.
    assertEquals(24 - 0.21 * 0.21, bay.fill().area(), 1e-6);
    TileCheck.assertTiles(bay);
    assertEquals(1, bay.polygon().getNumInteriorRing());
  }

  @Test
  void doorwaysLeadToTheNearestPart() {
    Room hall = room("hall", rectangle(0, 0, 6, 4), exit(0, 1, 0, 2), doorway("store", 6, 1, 6, 2));
    Room store = room("store", rectangle(6, 0, 2, 4));
    List<Room> rooms = List.of(hall, store);
    BayPlan plan =
        BayPlan.of(rooms, List.of(joint(3, 0, 3, 4)), List.of(Layer.whole(TEN)), BUCKETS);
    assertEquals(List.of("store", "hall 1", "hall 2"), names(plan));
    assertEquals(
        List.of("store DOORWAY", "hall 1 MOVING_JOINT"),
        plan.joints().stream().map(j -> j.bay() + " " + j.kind()).toList());
    WalkCheck.assertNobodyIsWalledIn(rooms, plan);
  }

  @Test
  void jointThroughTwoRoomsDividesBoth() {
    Room hall = room("hall", rectangle(0, 0, 6, 4), exit(0, 1, 0, 2));
    Room attic = room("attic", rectangle(0, 5, 6, 4), exit(0, 6, 0, 7));
    BayPlan plan =
        BayPlan.of(
            List.of(hall, attic), List.of(joint(3, 0, 3, 9)), List.of(Layer.whole(TEN)), BUCKETS);
    assertEquals(4, plan.bays().size());
    assertEquals(2, plan.joints().size());
  }

  @Test
  void namesOfBaysAreTheirOwn() {
    Room hall = room("hall", rectangle(0, 0, 6, 4), exit(0, 1, 0, 2));
    Room same = room("hall 1", rectangle(10, 0, 6, 4), exit(10, 1, 10, 2));
    BayPlan plan =
        BayPlan.of(
            List.of(hall, same), List.of(joint(3, 0, 3, 4)), List.of(Layer.whole(TEN)), BUCKETS);
    assertEquals(3, plan.bays().stream().map(Bay::id).distinct().count());
  }

  @Test
  void nothingLeftOfARoomIsAnError() {
    Room closet = room("closet", rectangle(0, 0, 0.9, 0.9), exit(0, 0.1, 0, 0.8));
    BayPlan plan = plan(closet, drain(0.45, 0.45, 1.0));
    Findings findings = new Findings();
    plan.warn(List.of(closet), Place.root().at("rooms"), findings);
    assertEquals("features-leave-no-floor", findings.errors().get(0).code());
  }

  @Test
  void preparationAddsUp() {
    Feature gap =
        new Feature(
            FeatureKind.GAP,
            Optional.of(new Position(0, 0)),
            Optional.of(new Position(6, 0)),
            Optional.empty(),
            OptionalDouble.of(0.010),
            OptionalDouble.of(0.050));
    Feature crack = Feature.line(FeatureKind.CRACK, new Position(-1, 2), new Position(2, 2));
    Preparation told =
        Preparations.of(
            List.of(TestRooms.hall()), List.of(gap, crack, joint(3, 0, 3, 4), drain(1, 1, 0.15)));
    assertEquals(6 * 0.010 * 0.050, told.foamVolume(), 1e-12);
    // Of 3 m drawn, 2 m lie in the room.
    assertEquals(2, told.crackLength(), 1e-9);
    assertEquals(4, told.jointLength(), 1e-9);
    assertEquals(
        List.of("2 carry-joint-through", "3 tape-off"),
        told.keepOpen().stream().map(k -> k.feature() + " " + k.what().code()).toList());
    assertTrue(told.keepOpen().get(1).outline().isPresent());
  }

  private static BayPlan plan(Room room, Feature... features) {
    return BayPlan.of(List.of(room), List.of(features), List.of(Layer.whole(TEN)), BUCKETS);
  }

  private static Feature joint(double x1, double y1, double x2, double y2) {
    return Feature.line(FeatureKind.MOVING_JOINT, new Position(x1, y1), new Position(x2, y2));
  }

  private static Feature drain(double x, double y, double width) {
    return Feature.at(FeatureKind.DRAIN, new Position(x, y), width);
  }

  private static List<String> names(BayPlan plan) {
    return plan.bays().stream().map(Bay::id).toList();
  }

  private static double area(BayPlan plan) {
    return plan.bays().stream().mapToDouble(bay -> bay.fill().area()).sum();
  }

  private static double minX(Bay bay) {
    return bay.polygon().getEnvelopeInternal().getMinX();
  }
}
