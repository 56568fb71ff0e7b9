package dev.fillplane.screed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.bay.Bay;
import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.Layer;
import dev.fillplane.bay.Split;
import dev.fillplane.bay.SplitKind;
import dev.fillplane.bay.TestRooms;
import dev.fillplane.bay.TiltedDepths;
import dev.fillplane.depth.Depths;
import dev.fillplane.depth.Fill;
import dev.fillplane.room.Feature;
import dev.fillplane.room.FeatureKind;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class RailPlanTest {

  private static final double TWELVE_FEET = 12 * 0.3048;

  /** Common practice, no source: a 12 ft screed on rails, which lie no further apart than that. */
  @Test
  void twelveFootScreedReachesFromRailToRail() {
    Random random = new Random(12);
    for (int i = 0; i < 60; i++) {
      double width = 3 + 9 * random.nextDouble();
      double length = width + 1;
      Room room =
          TestRooms.room(
              "room",
              TestRooms.rectangle(0, 0, length, width),
              TestRooms.exit(length, 1, length, 2));
      List<Rail> rails = Rails.of(plan(room, TiltedDepths.even(0.025)), TWELVE_FEET);
      double[] across = rails.stream().mapToDouble(RailPlanTest::across).sorted().toArray();
      assertTrue(across.length >= 2);
      for (int j = 1; j < across.length; j++) {
        assertTrue(across[j] - across[j - 1] <= TWELVE_FEET);
      }
    }
  }

  private static double across(Rail rail) {
    boolean alongX = Math.abs(rail.to().x() - rail.from().x()) > 0.1;
    return alongX ? rail.from().y() : rail.from().x();
  }

  /** 25 mm at the far wall, 15 mm at the exit: ripped to the shallow end, packed up by the rest. */
  @Test
  void railIsRippedToItsShallowestPlaceAndPackedUp() {
    Depths wedge = new TiltedDepths(0.015, 0.010 / 6, 0);
    for (Rail rail : Rails.of(plan(TestRooms.hall(), wedge), 3)) {
      assertEquals(wedge.at(0.01, 0), rail.ripWidth(), 1e-9);
      for (Station station : rail.stations()) {
        assertEquals(station.height(), rail.ripWidth() + station.shim(), 1e-12);
        assertTrue(station.shim() >= 0);
      }
      assertEquals(0, rail.stations().get(rail.stations().size() - 1).shim(), 1e-9);
    }
  }

  /** 20 mm in the middle, 29 mm at both ends. */
  @Test
  void shallowestPlaceMayLieBetweenStations() {
    Depths ridge = new Profile(x -> 0.020 + 0.003 * Math.abs(x - 3));
    for (Rail rail : Rails.of(plan(TestRooms.hall(), ridge), 3)) {
      assertEquals(0.020, rail.ripWidth(), 0.0002);
      assertTrue(rail.stations().get(0).shim() > 0.008);
    }
  }

  @Test
  void railsBreakAtAHump() {
    // 25 mm everywhere but 5 mm between x = 2.5 and 3.5.
    Depths hump = new Profile(x -> x > 2.5 && x < 3.5 ? 0.005 : 0.025);
    List<Rail> rails = Rails.of(plan(TestRooms.hall(), hump), 3);
    assertEquals(2 * 3, rails.size());
    for (Rail rail : rails) {
      assertTrue(rail.from().x() > 3.5 - 0.1 == rail.to().x() > 3.5 - 0.1);
      assertEquals(0.025, rail.ripWidth(), 1e-9);
    }
  }

  @Test
  void wallsAndTheMiddleAreToldApart() {
    List<Rail> rails = Rails.of(plan(TestRooms.hall(), TiltedDepths.even(0.025)), 2);
    assertEquals(
        List.of(RailSupport.WALL, RailSupport.FREE, RailSupport.WALL),
        rails.stream().map(Rail::support).toList());
  }

  /** The moving joint runs along the travel of both halves; the second rides on the first. */
  @Test
  void finishedEdgeOfAnEarlierBayCarriesTheScreed() {
    Room hall =
        TestRooms.room("hall", TestRooms.rectangle(0, 0, 6, 4), TestRooms.exit(0, 0.5, 0, 1.5));
    Feature joint = Feature.line(FeatureKind.MOVING_JOINT, new Position(0, 2), new Position(6, 2));
    BayPlan plan =
        BayPlan.of(
            List.of(hall),
            List.of(joint),
            List.of(Layer.whole(TiltedDepths.even(0.025))),
            TestRooms.BUCKETS);
    Bay second = plan.bays().get(1);
    assertEquals(1, Math.abs(second.travel().x()), 1e-9);
    List<Rail> rails =
        Rails.of(plan, 3).stream().filter(rail -> rail.bay().equals(second.id())).toList();
    List<Rail> edges = rails.stream().filter(rail -> rail.support() == RailSupport.EDGE).toList();
    assertEquals(1, edges.size());
    assertEquals(OptionalInt.empty(), edges.get(0).out());
    assertEquals(2, edges.get(0).from().y(), 0.02);
    assertEquals(2, rails.size());
    assertFalse(
        Rails.of(plan, 3).stream()
            .filter(rail -> rail.bay().equals(plan.bays().get(0).id()))
            .anyMatch(rail -> rail.support() == RailSupport.EDGE));
  }

  @Test
  void damAlongTheTravelCarriesTheScreedToo() {
    Room hall =
        TestRooms.room("hall", TestRooms.rectangle(0, 0, 6, 4), TestRooms.exit(0, 0.5, 0, 1.5));
    BayPlan whole = plan(hall, TiltedDepths.even(0.025));
    Split along = new Split(SplitKind.ALONG, new Position(0, 2), new Position(6, 2));
    BayPlan plan = whole.split(whole.bays().get(0), along);
    List<Rail> rails = Rails.of(plan, 3);
    assertEquals(1, rails.stream().filter(r -> r.support() == RailSupport.EDGE).count());
  }

  /** The east leg of the horseshoe is left behind first. */
  @Test
  void railsComeOutAsThePourLeavesThem() {
    Room room = TestRooms.horseshoe();
    BayPlan plan = plan(room, TiltedDepths.even(0.025));
    List<Rail> rails = Rails.of(plan, 3);
    assertEquals(
        rails.size(), rails.stream().map(rail -> rail.out().getAsInt()).distinct().count());
    int north =
        rails.stream()
            .filter(rail -> Math.min(rail.from().y(), rail.to().y()) > 3)
            .mapToInt(rail -> rail.out().getAsInt())
            .max()
            .orElseThrow();
    assertTrue(north <= rails.size());
    for (Rail a : rails) {
      for (Rail b : rails) {
        if (lastRibbon(plan, a) < lastRibbon(plan, b)) {
          assertTrue(a.out().getAsInt() < b.out().getAsInt());
        }
      }
    }
  }

  private static int lastRibbon(BayPlan plan, Rail rail) {
    double x = rail.to().x();
    double y = rail.to().y();
    return plan.bays().get(0).strips().stream()
        .filter(
            strip -> {
              Polygon p = strip.polygon();
              return p.getEnvelopeInternal().contains(x, y);
            })
        .mapToInt(strip -> strip.order())
        .min()
        .orElseThrow();
  }

  @Test
  void pocketsHaveNeitherRailsNorPins() {
    Depths deep = TiltedDepths.even(0.040);
    Room hall = TestRooms.hall();
    Layer bottom =
        new Layer(1, TiltedDepths.even(0.020), List.of(List.of(hall.outline().polygon())));
    BayPlan plan =
        BayPlan.of(
            List.of(hall),
            List.of(),
            List.of(bottom, new Layer(2, deep, List.of())),
            TestRooms.BUCKETS);
    assertEquals(2, plan.bays().size());
    List<Rail> rails = Rails.of(plan, 3);
    assertTrue(rails.stream().allMatch(rail -> rail.bay().equals("hall")));
    // The last lift is 20 mm: rails stand on the one below.
    assertEquals(0.020, rails.get(0).ripWidth(), 1e-9);
    assertEquals(List.of(), Pins.of(plan));
  }

  private static BayPlan plan(Room room, Depths depths) {
    return BayPlan.of(List.of(room), depths, TestRooms.BUCKETS);
  }

  /** As deep as told along x. */
  private record Profile(DoubleUnaryOperator depth) implements Depths {

    @Override
    public double at(double x, double y) {
      return depth.applyAsDouble(x);
    }

    @Override
    public Fill within(Polygon part) {
      return new Fill(part.getArea(), part.getArea() * at(part.getCentroid().getX(), 0));
    }

    @Override
    public Fill deeperThan(double depth) {
      throw new UnsupportedOperationException();
    }
  }
}
