package dev.fillplane.bay;

import static dev.fillplane.bay.TestRooms.BUCKETS;
import static dev.fillplane.bay.TestRooms.exit;
import static dev.fillplane.bay.TestRooms.rectangle;
import static dev.fillplane.bay.TestRooms.room;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;
import org.junit.jupiter.api.Test;

class SplitTest {

  private static final TiltedDepths TILT = new TiltedDepths(0.010, 0.002, 0);

  /** Both walls of the inner corner of 6 by 6 m without a quarter go on for 3 m. */
  @Test
  void necksOfAnEllAreOffered() {
    BayPlan plan = plan(TestRooms.ell());
    List<Split> necks =
        SplitCandidates.of(plan.bays().get(0)).stream()
            .filter(split -> split.kind() == SplitKind.NECK)
            .toList();
    assertEquals(2, necks.size());
    necks.forEach(split -> assertEquals(3, split.length(), 1e-6));
  }

  @Test
  void damAtANeckMakesTwoBays() {
    Room ell = TestRooms.ell();
    BayPlan plan = plan(ell);
    Split neck = new Split(SplitKind.NECK, new Position(3, 3), new Position(3, 0));
    BayPlan split = plan.split(plan.bays().get(0), neck);
    assertEquals(List.of("ell a", "ell b"), split.bays().stream().map(Bay::id).toList());
    // 3 by 6 m in the west first, then 3 by 3 m with the exit.
    assertEquals(18, split.bays().get(0).fill().area(), 1e-6);
    assertEquals(9, split.bays().get(1).fill().area(), 1e-6);
    assertEquals(3, split.bays().get(0).wayOut().x(), 1e-6);
    assertEquals(6, split.bays().get(1).wayOut().x(), 1e-6);
    Joint dam = split.joints().get(0);
    assertEquals(JointKind.DAM, dam.kind());
    assertEquals("ell a", dam.bay());
    assertEquals(3, dam.length(), 1e-9);
    // 16 mm deep at x = 3.
    assertEquals(0.016 + 0.010, dam.height(), 1e-9);
    double poured = split.bays().stream().mapToDouble(bay -> bay.fill().volume()).sum();
    assertEquals(plan.bays().get(0).fill().volume(), poured, 1e-9);
    WalkCheck.assertNobodyIsWalledIn(List.of(ell), split);
  }

  /** Two chambers with a passage of 0.9 m between two noses of the walls. */
  @Test
  void narrowPassageIsADoorway() {
    Room two =
        room(
            "two",
            "0 0, 4 0, 4 1.5, 4.2 1.5, 4.2 0, 8 0, 8 4, 4.2 4, 4.2 2.4, 4 2.4, 4 4, 0 4",
            exit(0, 1, 0, 2));
    List<Split> found = SplitCandidates.of(plan(two).bays().get(0));
    assertEquals(SplitKind.DOORWAY, found.get(0).kind());
    assertEquals(0.9, found.get(0).length(), 1e-6);
  }

  @Test
  void longRoomIsDividedHalfWayAndAlong() {
    Room street = room("street", rectangle(0, 0, 12, 3), exit(12, 1, 12, 2));
    BayPlan plan = plan(street);
    List<Split> found = SplitCandidates.of(plan.bays().get(0));
    assertEquals(
        List.of(SplitKind.ACROSS, SplitKind.ALONG), found.stream().map(Split::kind).toList());
    assertEquals(3, found.get(0).length(), 1e-6);
    assertEquals(12, found.get(1).length(), 1e-6);
    BayPlan across = plan.split(plan.bays().get(0), found.get(0));
    assertEquals(18, across.bays().get(0).fill().area(), 1e-6);
    BayPlan along = plan.split(plan.bays().get(0), found.get(1));
    assertEquals(1.5, along.bays().get(0).longestFront(), 1e-6);
  }

  @Test
  void damMayBeSplitAgain() {
    Room street = room("street", rectangle(0, 0, 12, 3), exit(12, 1, 12, 2));
    BayPlan plan = plan(street);
    for (int i = 0; i < 3; i++) {
      Bay first = plan.bays().get(0);
      plan = plan.split(first, SplitCandidates.of(first).get(0));
    }
    assertEquals(4, plan.bays().size());
    assertEquals(4, plan.bays().stream().map(Bay::id).distinct().count());
    assertEquals(3, plan.joints().size());
    for (Joint joint : plan.joints()) {
      assertTrue(plan.bays().stream().anyMatch(bay -> bay.id().equals(joint.bay())));
    }
    WalkCheck.assertNobodyIsWalledIn(List.of(street), plan);
  }

  @Test
  void damThatDividesNothingIsRefused() {
    BayPlan plan = plan(TestRooms.hall());
    Split stub = new Split(SplitKind.ACROSS, new Position(3, 0), new Position(3, 2));
    Bay bay = plan.bays().get(0);
    assertThrows(IllegalArgumentException.class, () -> plan.split(bay, stub));
  }

  private static BayPlan plan(Room room) {
    return BayPlan.of(List.of(room), TILT, BUCKETS);
  }
}
