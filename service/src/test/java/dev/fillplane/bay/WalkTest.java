package dev.fillplane.bay;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.room.Feature;
import dev.fillplane.room.FeatureKind;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

/** Ribbons of rooms made by chance: they tile their bay, and nobody is walled in. */
class WalkTest {

  private static final int ROOMS = 150;

  @Test
  void nobodyIsWalledIn() {
    SeededRooms rooms = new SeededRooms(20);
    for (int i = 0; i < ROOMS; i++) {
      Room room = rooms.next();
      check(room, List.of(), depths(rooms.random()), TestRooms.BUCKETS, "room " + i);
    }
  }

  @Test
  void nobodyIsWalledInByMovingJointsAndDrains() {
    SeededRooms rooms = new SeededRooms(21);
    for (int i = 0; i < ROOMS; i++) {
      Room room = rooms.next();
      List<Feature> features = features(room, rooms.random());
      check(room, features, depths(rooms.random()), TestRooms.BUCKETS, "room " + i);
    }
  }

  @Test
  void nobodyIsWalledInByLanesFromAHose() {
    SeededRooms rooms = new SeededRooms(22);
    for (int i = 0; i < ROOMS; i++) {
      Room room = rooms.next();
      check(room, List.of(), depths(rooms.random()), RibbonRule.byHose(0.05), "room " + i);
    }
  }

  @Test
  void nobodyIsWalledInByADam() {
    SeededRooms rooms = new SeededRooms(23);
    for (int i = 0; i < ROOMS / 3; i++) {
      Room room = rooms.next();
      BayPlan plan = BayPlan.of(List.of(room), depths(rooms.random()), TestRooms.BUCKETS);
      for (Split split : SplitCandidates.of(plan.bays().get(0))) {
        check(room, plan.split(plan.bays().get(0), split), "room " + i + " " + split);
      }
    }
  }

  /** Deep parts anywhere, at the door too, and two lifts of them. */
  @Test
  void nobodyIsWalledInByPockets() {
    SeededRooms rooms = new SeededRooms(24);
    for (int i = 0; i < ROOMS; i++) {
      Room room = rooms.next();
      Bowl bowl = Bowl.in(room, rooms.random());
      List<Layer> layers = bowl.layers(room, 0.02, 0.01);
      BayPlan plan = BayPlan.of(List.of(room), List.of(), layers, TestRooms.BUCKETS);
      check(room, plan, "room " + i + " " + room.outline().rings() + " " + bowl);
      double poured = plan.bays().stream().mapToDouble(bay -> bay.fill().volume()).sum();
      double whole = bowl.within(room.outline().polygon()).volume();
      assertEquals(whole, poured, 1e-6 * whole);
    }
  }

  private static TiltedDepths depths(Random random) {
    return new TiltedDepths(
        0.02, 0.003 * (random.nextDouble() - 0.5), 0.003 * (random.nextDouble() - 0.5));
  }

  private static List<Feature> features(Room room, Random random) {
    Envelope box = room.outline().polygon().getEnvelopeInternal();
    List<Feature> features = new ArrayList<>();
    double share = 0.2 + 0.6 * random.nextDouble();
    double x = box.getMinX() + share * box.getWidth();
    double y = box.getMinY() + (0.2 + 0.6 * random.nextDouble()) * box.getHeight();
    double reach = (random.nextBoolean() ? 1 : 0.6) * box.getHeight();
    Position foot = new Position(x, box.getMinY());
    Position top = new Position(x, box.getMinY() + reach);
    features.add(Feature.line(FeatureKind.MOVING_JOINT, foot, top));
    Position drain = new Position(box.getMinX() + (1 - share) * box.getWidth(), y);
    features.add(Feature.at(FeatureKind.DRAIN, drain, 0.15));
    return features;
  }

  private static void check(
      Room room, List<Feature> features, TiltedDepths depths, RibbonRule rule, String which) {
    BayPlan plan = BayPlan.of(List.of(room), features, List.of(Layer.whole(depths)), rule);
    check(room, plan, which + " " + room.outline().rings() + " " + features);
  }

  private static void check(Room room, BayPlan plan, String which) {
    try {
      plan.bays().forEach(TileCheck::assertTiles);
      WalkCheck.assertNobodyIsWalledIn(List.of(room), plan);
    } catch (AssertionError e) {
      throw new AssertionError(which + ": " + e.getMessage(), e);
    }
  }
}
