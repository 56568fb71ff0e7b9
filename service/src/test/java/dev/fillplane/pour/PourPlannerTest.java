package dev.fillplane.pour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.Move;
import dev.fillplane.bay.RibbonRule;
import dev.fillplane.bay.TestRooms;
import dev.fillplane.bay.TiltedDepths;
import dev.fillplane.finding.Remark;
import dev.fillplane.material.DataSheet;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.Room;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PourPlannerTest {

  private static final DataSheet SHEET = TestSheets.usual();
  private static final List<OtherPour> NONE = List.of();
  private static final double WARM = 5 * 60;
  private static final double COOL = 11.5 * 60;

  /**
   * 1.2 by 2 m, 10 mm deep, in 3 ribbons of 0.4 by 2 m: 8 L each, of 15 L batches. Water is
   * measured until 30 s. Batch 1 (bags opened 30, first water 90, ready 270, placed 305 after 15 s
   * to carry and 20 to pour) makes ribbon 1 and 7 L of ribbon 2, that is its first 1.75 m; batch 2
   * (270, 330, 510, 545) makes the rest. Edge 1 is met by batch 1 itself over 1.75 m at an age of
   * 215 s, then by batch 2 at 545 - 90. Ribbon 2 has a join between both: 455; its edge is met by
   * batch 2: 455 where batch 1 made it. Nothing meets ribbon 3, one batch makes it: 0.
   */
  @Test
  void agesOfThreeRibbonsByHand() {
    Room room =
        TestRooms.room("room", TestRooms.rectangle(0, 0, 1.2, 2), TestRooms.exit(1.2, 0, 1.2, 1));
    RibbonRule rule = new RibbonRule(0.015, 0.4, 0.4, 400);
    BayPlan plan = BayPlan.of(List.of(room), TiltedDepths.even(0.010), rule);
    Pour pour = PourPlanner.plan(plan, SHEET, crew(3, 1), Healing.of(COOL), NONE);

    List<Ribbon> ribbons = pour.bays().get(0).ribbons();
    assertEquals(3, ribbons.size());
    assertRibbon(ribbons.get(0), 1, 1, 305, 305, 455);
    assertRibbon(ribbons.get(1), 2, 2, 305, 545, 455);
    assertRibbon(ribbons.get(2), 3, 1, 545, 545, 0);
    assertBatch(pour.batches().get(0), 0.015, 1, 2, 30, 305, 215);
    assertBatch(pour.batches().get(1), 0.009, 2, 3, 270, 545, 455);
    assertEquals(2, pour.batches().size());
    assertEquals(545, pour.minutes(), 1e-9);
    assertEquals(Verdict.HOLDS, pour.verdict());
    assertEquals(List.of("edge-oldest", "mixing-is-slowest"), codes(pour.reasons()));
    assertEquals(455, amount(pour.reasons().get(0), "age"), 1e-9);
    assertEquals(0.75 * COOL, amount(pour.reasons().get(0), "limit"), 1e-9);
  }

  /** 0.4 by 0.4 m, 150 mm deep: one ribbon of 24 L, two batches that must join. */
  @Test
  void batchesOfOneRibbonMustJoin() {
    Room room =
        TestRooms.room(
            "room", TestRooms.rectangle(0, 0, 0.4, 0.4), TestRooms.exit(0.4, 0, 0.4, 0.4));
    Ribbon ribbon = pour(room, TiltedDepths.even(0.150)).bays().get(0).ribbons().get(0);
    assertEquals(2, ribbon.batches());
    assertEquals(455, ribbon.edgeAge(), 1e-9);
  }

  /**
   * Ten ribbons of 0.02 % more than a batch: where one ribbon has not reached its seam and the next
   * is past it, half a millimetre of edge waits for two batches. That is no cold joint.
   */
  @Test
  void crumbOfAnEdgeCountsForNothing() {
    Room room =
        TestRooms.room("room", TestRooms.rectangle(0, 0, 4, 2.5), TestRooms.exit(4, 0.5, 4, 1.5));
    RibbonRule rule = new RibbonRule(0.015, 0.4, 0.4, 400);
    BayPlan plan = BayPlan.of(List.of(room), TiltedDepths.even(0.015003), rule);
    List<Ribbon> ribbons = plan(plan).bays().get(0).ribbons();
    assertEquals(10, ribbons.size());
    ribbons.forEach(ribbon -> assertEquals(455, ribbon.edgeAge(), 1e-9));
  }

  /** 10.6 L, one batch, on the first 4.2 m of the passage: its edge to the dry part is not met. */
  @Test
  void edgeToADryFloorIsNotMet() {
    Pour pour = pour(TestRooms.passage(), new TiltedDepths(0.0042, -0.001, 0));
    List<Ribbon> ribbons = pour.bays().get(0).ribbons();
    ribbons.subList(0, 9).forEach(ribbon -> assertEquals(215, ribbon.edgeAge(), 1e-9));
    ribbons.subList(9, 18).forEach(ribbon -> assertEquals(0, ribbon.edgeAge()));
    assertEquals(1, ribbons.get(9).batches());
    assertEquals(0, ribbons.get(10).batches());
  }

  @Test
  void verdictTurnsAtTheReserveAndAtTheHealingTime() {
    BayPlan plan = plan(TestRooms.passage(), 0.010);
    double oldest = oldest(plan, crew(3, 1), COOL);
    assertEquals(Verdict.HOLDS, verdict(plan, crew(3, 1), oldest / 0.75 + 1));
    assertEquals(Verdict.TIGHT, verdict(plan, crew(3, 1), oldest / 0.75 - 1));
    assertEquals(Verdict.TIGHT, verdict(plan, crew(3, 1), oldest + 1));
    assertEquals(Verdict.BREAKS, verdict(plan, crew(3, 1), oldest - 1));
  }

  /** Common practice, no source: alone in warm air the edge is lost above three or four bags. */
  @Test
  void onePersonAloneBreaksInWarmAir() {
    BayPlan five = plan(TestRooms.passage(), 0.075 / (8 * 1.2));
    Pour pour = PourPlanner.plan(five, SHEET, crew(1, 1), Healing.of(WARM), NONE);
    assertEquals(5, pour.batches().size());
    assertEquals(Verdict.BREAKS, pour.verdict());
  }

  /**
   * Common practice, no source: a passage that takes about five bags falls behind in the heat with
   * one mixing station, unless something changes.
   */
  @Test
  void passageOfFiveBagsFallsBehindInTheHeat() {
    BayPlan five = plan(TestRooms.passage(), 0.075 / (8 * 1.2));
    OtherPour cooler = cooler(five, 10, COOL);
    Pour pour = PourPlanner.plan(five, SHEET, crew(3, 1), Healing.of(WARM), List.of(cooler));
    assertEquals(Verdict.BREAKS, pour.verdict());
    assertEquals(
        List.of("cooler-water"), pour.changes().stream().map(c -> c.remark().code()).toList());
    assertEquals(Verdict.HOLDS, pour.changes().get(0).verdict());
    assertEquals(10, amount(pour.changes().get(0).remark(), "temperature"));
    assertEquals(OptionalInt.empty(), pour.crew().needed());
  }

  /** Common practice, no source: the same passage holds on a cool day with three people. */
  @Test
  void threePeopleHoldOnACoolDay() {
    Pour pour =
        PourPlanner.plan(
            plan(TestRooms.passage(), 0.075 / (8 * 1.2)),
            SHEET,
            crew(3, 1),
            Healing.of(COOL),
            NONE);
    assertEquals(Verdict.HOLDS, pour.verdict());
    assertEquals(List.of(), pour.changes());
    assertEquals(OptionalInt.of(2), pour.crew().needed());
  }

  @Test
  void leastChangesThatHoldAreListed() {
    // Edges are 455 s old with one mixer, 335 s with two.
    BayPlan plan = plan(TestRooms.hall(), 0.009);
    Pour pour = PourPlanner.plan(plan, SHEET, crew(3, 1), Healing.of(500), NONE);
    assertEquals(Verdict.TIGHT, pour.verdict());
    assertEquals(
        List.of("one-more-mixer", "one-more-person-and-mixer", "two-more-people-and-mixer"),
        pour.changes().stream().map(c -> c.remark().code()).toList());
    pour.changes().forEach(change -> assertEquals(Verdict.HOLDS, change.verdict()));
  }

  @Test
  void threeChangesAreEnough() {
    BayPlan plan = plan(TestRooms.hall(), 0.009);
    List<OtherPour> cooler = List.of(cooler(plan, 8, 3600));
    Pour pour = PourPlanner.plan(plan, SHEET, crew(1, 1), Healing.of(640), cooler);
    assertEquals(
        List.of("cooler-water", "one-more-person", "one-more-person-and-mixer"),
        pour.changes().stream().map(c -> c.remark().code()).toList());
  }

  @Test
  void worstBayDecides() {
    Room closet = TestRooms.room("closet", TestRooms.rectangle(10, 0, 1, 1));
    BayPlan plan =
        BayPlan.of(List.of(TestRooms.hall(), closet), TiltedDepths.even(0.009), TestRooms.BUCKETS);
    Pour pour = PourPlanner.plan(plan, SHEET, crew(3, 1), Healing.of(400), NONE);
    // The closet takes one batch, its edges are 215 s old; those of the hall 455 s.
    assertEquals("closet", pour.bays().get(0).id());
    assertEquals(Verdict.BREAKS, pour.verdict());
    assertEquals("hall", pour.reasons().get(0).values().get("bay"));
  }

  @Test
  void bestChangeIsToldWhereNoneHolds() {
    BayPlan plan = plan(TestRooms.hall(), 0.009);
    Pour pour = PourPlanner.plan(plan, SHEET, crew(3, 1), Healing.of(350), NONE);
    assertEquals(Verdict.BREAKS, pour.verdict());
    assertEquals(1, pour.changes().size());
    assertEquals("one-more-mixer", pour.changes().get(0).remark().code());
    assertEquals(Verdict.TIGHT, pour.changes().get(0).verdict());
    // Nothing helps once a batch is stiff before it is on the floor.
    Pour stiff = PourPlanner.plan(plan, SHEET, Crew.of(12, 9, 30, 1), Healing.of(60), NONE);
    assertEquals(Verdict.BREAKS, stiff.verdict());
  }

  /**
   * Three ribbons of 8 L in batches of 15 L as above: first water of batch 1 at 90 s. Its edge
   * heals for 400 s, until 490 s; batch 2 meets it at 545 s.
   */
  @Test
  void whereAndWhenAPourIsLost() {
    Room room =
        TestRooms.room("room", TestRooms.rectangle(0, 0, 1.2, 2), TestRooms.exit(1.2, 0, 1.2, 1));
    RibbonRule rule = new RibbonRule(0.015, 0.4, 0.4, 400);
    BayPlan plan = BayPlan.of(List.of(room), TiltedDepths.even(0.010), rule);
    Pour lost = PourPlanner.plan(plan, SHEET, crew(3, 1), Healing.of(400), NONE);
    assertEquals(new LostEdge("room", 1, 2, 490, 545), lost.lostEdge().orElseThrow());
    assertEquals("edge-lost", lost.reasons().get(1).code());
    Pour stiff = PourPlanner.plan(plan, SHEET, crew(3, 1), Healing.of(200), NONE);
    assertEquals(new LostEdge("room", 1, 1, 290, 305), stiff.lostEdge().orElseThrow());
    Pour tight = PourPlanner.plan(plan, SHEET, crew(3, 1), Healing.of(456), NONE);
    assertEquals(Verdict.TIGHT, tight.verdict());
    assertTrue(tight.lostEdge().isEmpty());
  }

  @Test
  void hotterThanTheSheetIsTightAtBest() {
    BayPlan plan = plan(TestRooms.passage(), 0.0078);
    OtherPour cooler = cooler(plan, 10, COOL);
    Pour pour =
        PourPlanner.plan(plan, SHEET, crew(3, 1), new Healing(COOL, false), List.of(cooler));
    assertEquals(Verdict.TIGHT, pour.verdict());
    assertTrue(codes(pour.reasons()).contains("hotter-than-sheet"));
    assertEquals(OptionalInt.empty(), pour.crew().needed());
    assertEquals(List.of("cooler-water"), changes(pour));
    Pour alone = PourPlanner.plan(plan, SHEET, crew(3, 1), new Healing(COOL, false), NONE);
    assertEquals(List.of(), changes(alone), "no crew mends the heat");
    Pour lost = PourPlanner.plan(plan, SHEET, crew(3, 1), new Healing(WARM, false), NONE);
    assertEquals(Verdict.BREAKS, lost.verdict());
  }

  /** Half the front of a lane laid from a hose is met twice as soon; hands do not speed a pump. */
  @Test
  void aDamShortensTheFront() {
    Room wide =
        TestRooms.room("wide", TestRooms.rectangle(0, 0, 10, 7), TestRooms.exit(10, 1, 10, 2));
    BayPlan plan = BayPlan.of(List.of(wide), TiltedDepths.even(0.020), RibbonRule.byHose(0.015));
    double oldest = oldest(plan, Crews.pump(5), COOL);
    Pour pour = PourPlanner.plan(plan, SHEET, Crews.pump(5), Healing.of(oldest), NONE);
    assertEquals(Verdict.TIGHT, pour.verdict());
    assertEquals(List.of("dam"), changes(pour));
  }

  /** Cool water alone leaves 455 s too old for 600 s; with a second mixer edges are 335 s old. */
  @Test
  void whatIsNotEnoughAloneIsToldTogether() {
    BayPlan plan = plan(TestRooms.hall(), 0.009);
    List<OtherPour> water = List.of(cooler(plan, 8, 500));
    Pour pour = PourPlanner.plan(plan, SHEET, crew(3, 1), Healing.of(380), water);
    assertEquals(Verdict.BREAKS, pour.verdict());
    assertEquals(List.of("cooler-water-and-crew"), changes(pour));
    assertEquals(Verdict.HOLDS, pour.changes().get(0).verdict());
    assertEquals(2, pour.changes().get(0).remark().values().get("mixers"));
    assertEquals(8, amount(pour.changes().get(0).remark(), "temperature"));
  }

  @Test
  void oneChangeOfAKindIsEnough() {
    BayPlan plan = plan(TestRooms.hall(), 0.009);
    List<OtherPour> waters = List.of(cooler(plan, 8, 3600), cooler(plan, 6, 3700));
    Pour pour = PourPlanner.plan(plan, SHEET, crew(1, 1), Healing.of(640), waters);
    assertEquals(1, changes(pour).stream().filter("cooler-water"::equals).count());
    assertEquals(8, amount(pour.changes().get(0).remark(), "temperature"));
  }

  @Test
  void longFrontWantsADam() {
    Room wide = TestRooms.room("wide", TestRooms.rectangle(0, 0, 9, 8), TestRooms.exit(4, 0, 5, 0));
    assertTrue(codes(reasons(plan(wide, 0.005), crew(3, 1))).contains("front-long"));
    BayPlan hall = plan(TestRooms.hall(), 0.005);
    assertFalse(codes(reasons(hall, crew(3, 1))).contains("front-long"));
  }

  @Test
  void fewHandsAreSaid() {
    BayPlan plan = plan(TestRooms.hall(), 0.005);
    assertTrue(codes(reasons(plan, crew(2, 1))).contains("few-people"));
    assertFalse(codes(reasons(plan, crew(3, 1))).contains("few-people"));
    Room big =
        TestRooms.room("big", TestRooms.rectangle(0, 0, 20, 6), TestRooms.exit(20, 1, 20, 2));
    assertTrue(codes(reasons(plan(big, 0.005), crew(3, 1))).contains("few-people"));
  }

  @Test
  void moreHandsOrMixersNeverMakeAnEdgeOlder() {
    Random random = new Random(11);
    List<Room> rooms =
        List.of(TestRooms.hall(), TestRooms.ell(), TestRooms.horseshoe(), TestRooms.passage());
    for (int i = 0; i < 200; i++) {
      BayPlan plan = plan(rooms.get(i % 4), 0.003 + 0.02 * random.nextDouble());
      Crew crew =
          Crew.of(1 + random.nextInt(6), 1 + random.nextInt(3), null, 1 + random.nextInt(2));
      Crew more =
          Crew.of(
              crew.people() + random.nextInt(4),
              crew.mixers() + random.nextInt(3),
              crew.barrels() + random.nextInt(6),
              crew.bagsPerBatch());
      double healing = 200 + 1000 * random.nextDouble();
      assertTrue(oldest(plan, more, healing) <= oldest(plan, crew, healing), crew + " " + more);
      assertTrue(verdict(plan, more, healing).compareTo(verdict(plan, crew, healing)) <= 0);
    }
  }

  @Test
  void turningTheRoomChangesNoVerdict() {
    Random random = new Random(5);
    List<Room> rooms = List.of(TestRooms.hall(), TestRooms.ell(), TestRooms.hallWithColumn());
    for (int i = 0; i < 30; i++) {
      Room room = rooms.get(i % 3);
      Move move =
          new Move(50 * random.nextDouble(), -50 * random.nextDouble(), 7 * random.nextDouble());
      TiltedDepths depths = new TiltedDepths(0.012, 0.001, -0.0007);
      Pour still = pour(room, depths);
      Pour turned = pour(move.of(room), depths.moved(move));
      assertEquals(still.verdict(), turned.verdict());
      assertEquals(still.batches().size(), turned.batches().size());
      assertEquals(still.minutes(), turned.minutes(), 1e-6);
      for (int r = 0; r < still.bays().get(0).ribbons().size(); r++) {
        Ribbon ribbon = still.bays().get(0).ribbons().get(r);
        Ribbon same = turned.bays().get(0).ribbons().get(r);
        assertEquals(ribbon.volume(), same.volume(), 1e-8);
        assertEquals(ribbon.edgeAge(), same.edgeAge(), 1e-9);
      }
    }
  }

  @Test
  void batchesCarryTheVolume() {
    Pour pour = pour(TestRooms.hall(), TiltedDepths.even(0.009));
    // 216 L are 14.4 bags; the last batch has one bag like the others.
    assertEquals(15, pour.batches().size());
    Pour pairs =
        PourPlanner.plan(
            plan(TestRooms.hall(), 0.009), SHEET, Crew.of(3, 1, 2, 2), Healing.of(COOL), NONE);
    assertEquals(8, pairs.batches().size());
    assertEquals(1, pairs.batches().get(7).bags());
    assertEquals(15, pairs.batches().stream().mapToInt(Batch::bags).sum());
  }

  @Test
  void nothingToPour() {
    Pour pour = pour(TestRooms.hall(), TiltedDepths.even(-0.005));
    assertEquals(Verdict.HOLDS, pour.verdict());
    assertEquals(List.of("nothing-to-pour"), codes(pour.reasons()));
    assertEquals(List.of(), pour.batches());
    assertEquals(0, pour.minutes());
    pour.bays().get(0).ribbons().forEach(ribbon -> assertEquals(0, ribbon.batches()));
  }

  @Test
  void ribbonsAreNumberedOverTheWholeFloor() {
    Room hall =
        TestRooms.room(
            "hall",
            TestRooms.rectangle(0, 0, 6, 4),
            TestRooms.exit(0, 1, 0, 2),
            TestRooms.doorway("store", 6, 1, 6, 2));
    Room store = TestRooms.room("store", TestRooms.rectangle(6, 0, 3, 3));
    BayPlan plan = BayPlan.of(List.of(hall, store), TiltedDepths.even(0.009), TestRooms.BUCKETS);
    Pour pour = PourPlanner.plan(plan, SHEET, crew(3, 1), Healing.of(COOL), NONE);
    int order = 1;
    for (PouredBay bay : pour.bays()) {
      for (Ribbon ribbon : bay.ribbons()) {
        assertEquals(order++, ribbon.order());
        assertNotEquals(0, ribbon.batches());
      }
    }
    assertEquals("store", pour.bays().get(0).id());
    assertEquals("store", pour.joints().get(0).bay());
  }

  private static List<String> changes(Pour pour) {
    return pour.changes().stream().map(change -> change.remark().code()).toList();
  }

  private static OtherPour cooler(BayPlan bays, double water, double healing) {
    Remark remark =
        Remark.of("cooler-water", "temperature", Amount.of(water, Dimension.TEMPERATURE));
    return new OtherPour(
        Effort.SMALL, remark, "cooler-water-and-crew", () -> bays, SHEET, Healing.of(healing));
  }

  private static void assertRibbon(
      Ribbon ribbon, int order, int batches, double start, double end, double age) {
    assertEquals(order, ribbon.order());
    assertEquals(0.008, ribbon.volume(), 1e-9);
    assertEquals(batches, ribbon.batches());
    assertEquals(start, ribbon.start(), 1e-9);
    assertEquals(end, ribbon.end(), 1e-9);
    assertEquals(age, ribbon.edgeAge(), 1e-9);
  }

  private static void assertBatch(
      Batch batch, double volume, int first, int last, double start, double placed, double edge) {
    assertEquals(volume, batch.volume(), 1e-12);
    assertEquals(first, batch.firstRibbon());
    assertEquals(last, batch.lastRibbon());
    assertEquals(start, batch.mixStart(), 1e-9);
    assertEquals(start + 60, batch.firstWater(), 1e-9);
    assertEquals(start + 240, batch.ready(), 1e-9);
    assertEquals(placed, batch.placed(), 1e-9);
    assertEquals(215, batch.age(), 1e-9);
    assertEquals(edge, batch.edgeAge().orElseThrow(), 1e-9);
  }

  private static Crew crew(int people, int mixers) {
    return Crew.of(people, mixers, null, 1);
  }

  private static BayPlan plan(Room room, double depth) {
    return BayPlan.of(List.of(room), TiltedDepths.even(depth), TestRooms.BUCKETS);
  }

  private static List<Remark> reasons(BayPlan plan, Crew crew) {
    return PourPlanner.plan(plan, SHEET, crew, Healing.of(COOL), NONE).reasons();
  }

  private static Pour plan(BayPlan plan) {
    return PourPlanner.plan(plan, SHEET, crew(3, 1), Healing.of(COOL), NONE);
  }

  private static Pour pour(Room room, TiltedDepths depths) {
    return plan(BayPlan.of(List.of(room), depths, TestRooms.BUCKETS));
  }

  private static Verdict verdict(BayPlan plan, Crew crew, double healing) {
    return PourPlanner.plan(plan, SHEET, crew, Healing.of(healing), NONE).verdict();
  }

  private static double oldest(BayPlan plan, Crew crew, double healing) {
    return PourPlanner.plan(plan, SHEET, crew, Healing.of(healing), NONE).bays().stream()
        .flatMap(bay -> bay.ribbons().stream())
        .mapToDouble(Ribbon::edgeAge)
        .max()
        .orElse(0);
  }

  private static List<String> codes(List<Remark> remarks) {
    return remarks.stream().map(Remark::code).toList();
  }

  private static double amount(Remark remark, String name) {
    return ((Amount) remark.values().get(name)).si();
  }
}
