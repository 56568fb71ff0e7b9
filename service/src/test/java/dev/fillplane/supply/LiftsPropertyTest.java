package dev.fillplane.supply;

import static dev.fillplane.surface.TestFloors.crooked;
import static dev.fillplane.surface.TestFloors.room;
import static dev.fillplane.surface.TestFloors.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.depth.Contours;
import dev.fillplane.depth.DepthField;
import dev.fillplane.depth.DepthSummary;
import dev.fillplane.depth.Levels;
import dev.fillplane.depth.VolumeOdds;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.DataSheet;
import dev.fillplane.room.Room;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.TestFloors;
import dev.fillplane.target.Plane;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What must hold of layers and thin parts on crooked rooms (seeded) and wavy floors. */
class LiftsPropertyTest {

  private static final DataSheet SHEET = Sheets.withLifts(0.003, 0.020);

  @Test
  void layersAddUpAndLieInOneAnother() {
    Random random = new Random(21);
    int several = 0;
    for (int i = 0; i < 30; i++) {
      DepthField field = field(room("r", crooked(random)), 0.05 * random.nextDouble());
      List<Lift> lifts = lifts(field);
      if (lifts.isEmpty()) {
        assertEquals(0, field.volume());
        continue;
      }
      several += lifts.size() > 1 ? 1 : 0;
      double volume = lifts.stream().mapToDouble(Lift::volume).sum();
      double thickness = lifts.stream().mapToDouble(Lift::maximumDepth).sum();
      assertEquals(field.volume(), volume, 1e-9 * field.volume());
      assertEquals(field.maximum(), thickness, 1e-9);
      double below = 0;
      for (Lift lift : lifts) {
        assertTrue(lift.area() >= below && lift.area() > 0);
        assertTrue(lift.volume() <= lift.area() * lift.maximumDepth() * (1 + 1e-9));
        assertTrue(lift.thinArea() >= 0 && lift.thinArea() <= lift.area());
        below = lift.area();
      }
      assertEquals(field.pouredArea(), below, 1e-9 * below);
    }
    assertTrue(several > 10, "only " + several + " with several layers");
  }

  @Test
  void theTopLayerIsThinWhereThePourIs() {
    Random random = new Random(22);
    int thinOnes = 0;
    for (int i = 0; i < 10; i++) {
      DepthField field = field(room("r", crooked(random)), 0.04 * random.nextDouble());
      ThinArea thin = ThinArea.of(field, summary(field), SHEET);
      List<Lift> lifts = lifts(field);
      double top = lifts.isEmpty() ? 0 : lifts.get(lifts.size() - 1).thinArea();
      assertEquals(thin.area(), top);
      thinOnes += thin.area() > 0 ? 1 : 0;
    }
    assertTrue(thinOnes > 2, "only " + thinOnes);
  }

  /** Raising the target by what is missing leaves nothing thin; grinding is the cut of a plane. */
  @Test
  void whatIsToldMendsIt() {
    Random random = new Random(23);
    for (int i = 0; i < 10; i++) {
      Room room = room("r", crooked(random));
      double target = 0.01 * random.nextDouble();
      ThinArea thin = ThinArea.of(field(room, target), summary(field(room, target)), SHEET);
      assertTrue(thin.missing() > 0);
      DepthField raised = field(room, target + thin.missing());
      assertEquals(0, ThinArea.of(raised, summary(raised), SHEET).area());
      DepthField ground = field(room, target - 0.003);
      assertEquals(ground.grindArea(), thin.grindArea(), 1e-5);
      assertEquals(ground.grindVolume(), thin.grindVolume(), 1e-7);
    }
  }

  /** Ground to 2 mm under the target, 1 mm more has to go where the sheet wants 3 mm. */
  @Test
  void aFloorGroundTooLittleIsThinThere() {
    Random random = new Random(24);
    for (int i = 0; i < 10; i++) {
      FloorSample floor = floor(room("r", crooked(random)));
      Levels levels = new Levels(List.of(Plane.level(0.005)), OptionalDouble.of(0.002));
      DepthField field = DepthField.of(floor, levels);
      ThinArea thin = ThinArea.of(field, summary(field), SHEET);
      assertEquals(0.001, thin.missing(), 1e-9);
      DepthField right =
          DepthField.of(floor, new Levels(levels.planes(), OptionalDouble.of(0.003)));
      assertEquals(right.grindArea(), thin.grindArea(), 1e-5);
      assertEquals(right.grindVolume() - field.grindVolume(), thin.grindVolume(), 1e-7);
      assertEquals(0, ThinArea.of(right, summary(right), SHEET).area());
      double volume = lifts(field).stream().mapToDouble(Lift::volume).sum();
      assertEquals(field.volume(), volume, 1e-9 * field.volume());
    }
  }

  /** Waves of some 20 mm over and under the plan. */
  private static FloorSample floor(Room room) {
    return sample((x, y) -> 5 * TestFloors.waves(x, y), 0.2, room);
  }

  private static DepthField field(Room room, double target) {
    return DepthField.of(floor(room), Plane.level(target));
  }

  private static List<Lift> lifts(DepthField field) {
    return new Lifts(field, summary(field), SHEET, new PrimerNeed(List.of(), SHEET), 3600)
        .layers(Place.root(), new Findings());
  }

  private static DepthSummary summary(DepthField field) {
    return new DepthSummary(
        field.area(),
        field.pouredArea(),
        field.mean(),
        field.maximum(),
        field.minimum(),
        field.volume(),
        new VolumeOdds(0, 0, 0),
        List.of(),
        field.grindVolume(),
        field.grindArea(),
        field.deepest(),
        field.highest(),
        List.of(),
        field.grid(),
        new Contours(List.of()));
  }
}
