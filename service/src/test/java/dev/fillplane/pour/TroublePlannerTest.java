package dev.fillplane.pour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.Joint;
import dev.fillplane.bay.JointKind;
import dev.fillplane.bay.TestRooms;
import dev.fillplane.bay.TiltedDepths;
import dev.fillplane.finding.Remark;
import dev.fillplane.heat.Mix;
import dev.fillplane.heat.Needed;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.Position;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class TroublePlannerTest {

  private static final DataSheet SHEET = TestSheets.usual();
  private static final double HEALING = 1200;
  private static final double WALK_ON = 3.2 * 3600;
  private static final BayPlan ONE_BAY = EvenFloors.plan(8, 1.5, 1);
  private static final BayPlan THREE_BAYS = EvenFloors.plan(3, 4, 1.5, 1);

  @Test
  void standstillIsWhatTheOldestEdgeLeavesOfTheHealingTime() {
    Pour pour = pour(ONE_BAY, Crew.usual(), HEALING);
    double oldest =
        pour.bays().get(0).ribbons().stream().mapToDouble(Ribbon::edgeAge).max().getAsDouble();
    assertTrue(oldest > 400 && oldest < HEALING, "oldest " + oldest);
    assertEquals(HEALING - oldest, troubles(ONE_BAY, Crew.usual(), 1).standstill(), 1e-9);
  }

  /** A break in which no batch is begun, at any moment: as long as told holds, longer does not. */
  @Test
  void standstillCanBeBorneAtAnyMoment() {
    double standstill = troubles(ONE_BAY, Crew.usual(), 1).standstill();
    double worst = 0;
    for (double at = 0; at < 8 * 240; at += 60) {
      assertTrue(oldest(at, standstill) <= HEALING + 1e-6, "at " + at);
      worst = Math.max(worst, oldest(at, standstill + 61));
    }
    assertTrue(worst > HEALING, "worst " + worst);
  }

  private static double oldest(double at, double length) {
    Crew crew =
        new Crew(
            3,
            1,
            2,
            null,
            1,
            null,
            null,
            null,
            OptionalDouble.empty(),
            null,
            List.of(new Break(at, length)),
            Optional.empty());
    return pour(ONE_BAY, crew, HEALING).batches().stream()
        .mapToDouble(batch -> batch.edgeAge().orElse(0))
        .max()
        .orElse(0);
  }

  @Test
  void noStandstillWhereThePourBreaks() {
    assertEquals(0, troubles(ONE_BAY, Crew.usual(), 300, 1).standstill());
  }

  /** Four bags a room; the first batch of four is on the floor at 305 s, the others 240 s apart. */
  @Test
  void stopsAreTheEndsOfTheBaysButTheLast() {
    List<StopPlace> stops = troubles(THREE_BAYS, Crew.usual(), 1).stops();
    assertEquals(
        List.of("4 8", "8 4"),
        stops.stream().map(stop -> stop.bagsUsed() + " " + stop.bagsLeft()).toList());
    assertEquals(305 + 3 * 240, stops.get(0).placed(), 1e-6);
    assertEquals(305 + 7 * 240, stops.get(1).placed(), 1e-6);
    assertEquals(THREE_BAYS.bays().get(0).id(), stops.get(0).bay());
    assertEquals(List.of(), stops.get(0).joints());
  }

  @Test
  void onlyWhatTheJobHas() {
    assertEquals(
        List.of(
            Mishap.DRILL_DIES,
            Mishap.POWER_OFF,
            Mishap.LEAK,
            Mishap.CLUMP,
            Mishap.BAGS_SHORT,
            Mishap.EDGE_LOST),
        codes(troubles(ONE_BAY, Crew.usual(), 1)));
    assertEquals(
        List.of(
            Mishap.PUMP_STOPS, Mishap.POWER_OFF, Mishap.CLUMP, Mishap.BAGS_SHORT, Mishap.EDGE_LOST),
        codes(troubles(ONE_BAY, Crews.pump(3), 0)));
    // One batch runs over two ribbons and meets its own edge.
    assertEquals(
        List.of(Mishap.DRILL_DIES, Mishap.POWER_OFF, Mishap.CLUMP, Mishap.EDGE_LOST),
        codes(troubles(EvenFloors.plan(1, 1.5, 1), Crew.usual(), 0)));
    BayPlan dry =
        BayPlan.of(List.of(TestRooms.hall()), TiltedDepths.even(-0.005), TestRooms.BUCKETS);
    assertEquals(new Troubles(0, List.of(), List.of()), troubles(dry, Crew.usual(), 1));
  }

  /** A dam across a room can leak, too; a joint in a doorway is a dam already. */
  @Test
  void damsInTheRoomsCount() {
    Pour pour = pour(ONE_BAY, Crew.usual(), HEALING);
    Trouble leak =
        find(
            TroublePlanner.plan(
                ONE_BAY,
                SHEET,
                with(List.of(joint(Optional.empty()), joint(Optional.of("door"))), pour),
                site(Crew.usual(), HEALING, 1)),
            Mishap.LEAK);
    assertEquals(2, leak.now().values().get("dams"));
  }

  private static Joint joint(Optional<String> opening) {
    Position from = new Position(3, 0);
    JointKind kind = opening.isEmpty() ? JointKind.DAM : JointKind.DOORWAY;
    return new Joint("a", kind, opening, from, new Position(3, 1), 1, 0.02);
  }

  private static Pour with(List<Joint> joints, Pour pour) {
    return new Pour(
        pour.verdict(),
        pour.reasons(),
        pour.lostEdge(),
        pour.bays(),
        pour.batches(),
        pour.workers(),
        pour.totals(),
        joints,
        pour.crew(),
        pour.changes(),
        pour.minutes());
  }

  private static List<Mishap> codes(Troubles troubles) {
    return troubles.cases().stream().map(Trouble::code).toList();
  }

  @Test
  void drills() {
    assertEquals("only-drill-dies", now(ONE_BAY, Crew.usual(), Mishap.DRILL_DIES).code());
    Crew two = Crew.of(6, 2, 4, 1);
    assertEquals("other-drills-hold", now(ONE_BAY, two, Mishap.DRILL_DIES).code());
    // Two mixers hold with 500 s where one does not.
    Troubles tooShort = troubles(ONE_BAY, two, 500, 1);
    assertEquals(Verdict.HOLDS, pour(ONE_BAY, two, 500).verdict());
    assertEquals("other-drills-fall-behind", find(tooShort, Mishap.DRILL_DIES).now().code());
    assertEquals(1, find(tooShort, Mishap.DRILL_DIES).now().values().get("left"));
  }

  /** Wet from 60 s after the bags are opened until placed, 215 s; the next opens 240 s later. */
  @Test
  void bagsAtStake() {
    Troubles one = troubles(ONE_BAY, Crew.usual(), 1);
    assertEquals(1, find(one, Mishap.POWER_OFF).bags());
    assertEquals(2, find(troubles(ONE_BAY, Crew.of(6, 2, 4, 1), 1), Mishap.POWER_OFF).bags());
    assertEquals(1, find(one, Mishap.CLUMP).bags());
    assertEquals(8, find(one, Mishap.LEAK).bags());
    assertEquals(4, find(troubles(THREE_BAYS, Crew.usual(), 1), Mishap.LEAK).bags());
  }

  @Test
  void bagsAreCountedHalfWayOrBeforeTheLastBay() {
    Trouble half = find(troubles(ONE_BAY, Crew.usual(), 1), Mishap.BAGS_SHORT);
    assertEquals("count-bags-half-way", half.now().code());
    assertEquals(4, half.bags());
    assertEquals(8, half.now().values().get("planned"));
    assertEquals(11, half.now().values().get("order"));
    assertEquals(Amount.of(305 + 3 * 240, Dimension.TIME), half.now().values().get("placed"));
    Trouble last = find(troubles(THREE_BAYS, Crew.usual(), 1), Mishap.BAGS_SHORT);
    assertEquals("count-bags-before-last-bay", last.now().code());
    assertEquals(4, last.bags());
    assertEquals(THREE_BAYS.bays().get(1).id(), last.now().values().get("before"));
  }

  /** The last moment of the oldest edge is its first water and the healing time. */
  @Test
  void oldestEdge() {
    Pour pour = pour(ONE_BAY, Crew.usual(), HEALING);
    Trouble lost = find(troubles(ONE_BAY, Crew.usual(), 1), Mishap.EDGE_LOST);
    assertEquals("edge-waits-longest", lost.now().code());
    Batch meets = pour.batches().get((int) lost.now().values().get("batch") - 1);
    for (Batch other : pour.batches()) {
      assertTrue(other.edgeAge().orElse(0) <= meets.edgeAge().getAsDouble());
    }
    double latest = ((Amount) lost.now().values().get("latest")).si();
    assertEquals(HEALING - meets.edgeAge().getAsDouble(), latest - meets.placed(), 1e-9);
    assertEquals(8 - meets.number() + 1, lost.bags());
    assertEquals(Amount.of(0.01, Dimension.HEIGHT).si(), depth(lost), 1e-9);
    assertEquals(
        "edge-is-lost-as-planned",
        find(troubles(ONE_BAY, Crew.usual(), 300, 1), Mishap.EDGE_LOST).now().code());
  }

  private static double depth(Trouble trouble) {
    return ((Amount) trouble.now().values().get("depth")).si();
  }

  /** Walking is allowed after 3.2 h. */
  @Test
  void nextDay() {
    Trouble power = find(troubles(ONE_BAY, Crew.usual(), 1), Mishap.POWER_OFF);
    assertEquals("go-on-next-day", power.nextDay().code());
    assertEquals(4, power.nextDay().values().get("hours"));
  }

  private static Remark now(BayPlan plan, Crew crew, Mishap code) {
    return find(troubles(plan, crew, 1), code).now();
  }

  private static Trouble find(Troubles troubles, Mishap code) {
    return troubles.cases().stream().filter(c -> c.code() == code).findFirst().orElseThrow();
  }

  private static Pour pour(BayPlan plan, Crew crew, double healing) {
    return PourPlanner.plan(plan, SHEET, crew, Healing.of(healing), List.of());
  }

  private static Troubles troubles(BayPlan plan, Crew crew, int dams) {
    return troubles(plan, crew, HEALING, dams);
  }

  private static Troubles troubles(BayPlan plan, Crew crew, double healing, int dams) {
    return TroublePlanner.plan(plan, SHEET, pour(plan, crew, healing), site(crew, healing, dams));
  }

  private static TroubleSite site(Crew crew, double healing, int dams) {
    Needed nothing = new Needed(OptionalDouble.empty(), OptionalDouble.empty());
    return new TroubleSite(crew, new Mix(20, 900, healing, 0.005, nothing), 11, dams, WALK_ON);
  }
}
