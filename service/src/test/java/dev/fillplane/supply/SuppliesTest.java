package dev.fillplane.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.depth.Depths;
import dev.fillplane.depth.Fill;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.room.Absorbency;
import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Outline;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** Two rooms of 5 m and 3 m by 1 m under a wedge of 0 to 16 mm. */
class SuppliesTest {

  private static final DataSheet SHEET = Catalogue.usual();
  private static final double ROUNDING = 1e-9;
  private static final double WAIT = 5 * 3600;
  private static final List<Position> ISLAND = ring(1, 0.2, 1.5, 0.6);

  private static final Room HALL =
      room(
          "hall",
          List.of(ring(0, 0, 5, 1), ISLAND),
          Absorbency.NORMAL,
          opening("yard", new Position(2, 0), new Position(2.9, 0)),
          opening("door", new Position(5, 0.1), new Position(5, 0.9)));
  private static final Room STORE = room("store", List.of(ring(5, 0, 8, 1)), Absorbency.HIGH);

  private final Findings findings = new Findings();

  @Test
  void waterAndMassBelongToTheOrder() {
    Quantities quantities = quantities(new Wedge(0, 0.016));
    assertEquals(new Bags(5, 4, 5, 6, 7, 2), quantities.bags());
    assertEquals(7 * 0.005, quantities.mixWater(), ROUNDING);
    assertEquals(7 * 25, quantities.mass(), ROUNDING);
  }

  @Test
  void rooms() {
    RoomQuantity store = quantities(new Wedge(0, 0.016)).rooms().get(1);
    assertEquals("store", store.room());
    assertEquals(3, store.area(), ROUNDING);
    assertEquals(0.013, store.meanDepth(), ROUNDING);
    assertEquals(3 * 0.013, store.volume(), ROUNDING);
    assertEquals(3, store.bags());
  }

  @Test
  void sealRunsRoundWallsAndIslandsButNotThroughOpenings() {
    assertEquals(
        12 + 1.8 - 0.9 - 0.8 + 8, quantities(new Wedge(0, 0.016)).perimeterSeal(), ROUNDING);
  }

  @Test
  void damsStandAboveTheDeepestOfThreePoints() {
    List<Dam> dams = quantities(new Wedge(0, 0.016)).dams();
    assertEquals(2, dams.size());
    assertEquals("yard", dams.get(0).opening());
    assertEquals(0.9, dams.get(0).length(), ROUNDING);
    assertEquals(0.0058 + 0.010, dams.get(0).height(), ROUNDING);
    assertEquals(0.010 + 0.010, dams.get(1).height(), ROUNDING);
    assertEquals(0.012 + 0.010, quantities(new Wedge(0.016, 0)).dams().get(0).height(), ROUNDING);
  }

  @Test
  void aDamStandsAboveAHollowInTheMiddleOfTheOpening() {
    Depths hollow = depthsThat((x, y) -> 0.020 - 0.02 * Math.abs(x - 2.45));
    assertEquals(0.030, damAtTheYard(hollow), ROUNDING);
    Depths hump = depthsThat((x, y) -> 0.02 * Math.abs(x - 2.45));
    assertEquals(0.009 + 0.010, damAtTheYard(hump), ROUNDING);
  }

  private double damAtTheYard(Depths depths) {
    return quantities(depths, new Wedge(0, 0.016)).dams().get(0).height();
  }

  private static Depths depthsThat(DoubleBinaryOperator depth) {
    return new Depths() {
      @Override
      public double at(double x, double y) {
        return depth.applyAsDouble(x, y);
      }

      @Override
      public Fill within(Polygon part) {
        return new Fill(0, 0);
      }

      @Override
      public Fill deeperThan(double least) {
        return new Fill(0, 0);
      }
    };
  }

  @Test
  void aDamIsNeverLowerThanTenMillimetres() {
    assertEquals(0.010, quantities(new Wedge(-0.05, -0.01)).dams().get(0).height(), ROUNDING);
  }

  @Test
  void primerByRoomAndAgainBetweenLifts() {
    Primer single = quantities(new Wedge(0, 0.016)).primer();
    double hall = (5 - 0.2) / 8000;
    double store = 2 * 3 / 4000.0;
    assertEquals(hall + store, single.liquid(), ROUNDING);
    assertEquals(2, single.coats());
    Primer twice = quantities(new Wedge(0, 0.032)).primer();
    assertEquals(hall + store + 5.0 / 8000, twice.liquid(), ROUNDING);
  }

  /**
   * 5 of 8 m2 lie under two layers. The thirst of the floor is the mean of both rooms, whose 7.8 m2
   * are the wedge's 8 m2 without the island.
   */
  @Test
  void layersHaveTheirBagsPrimerAndWait() {
    Quantities quantities = quantities(new Wedge(0, 0.032));
    double floor = (5 - 0.2) / 8000 + 2 * 3 / 4000.0;
    Lift first = quantities.lifts().get(0);
    Lift second = quantities.lifts().get(1);
    assertEquals(floor * 5 / 7.8, first.primer().liquid(), ROUNDING);
    assertEquals(floor * 3 / 7.8 + 5.0 / 8000, second.primer().liquid(), ROUNDING);
    assertEquals(2, second.primer().coats());
    assertEquals(OptionalDouble.empty(), first.waitBefore());
    assertEquals(OptionalDouble.of(WAIT), second.waitBefore());
    assertEquals(BagOdds.likely(0.050, 5, SHEET), first.bags());
    assertEquals(BagOdds.likely(0.078, 3, SHEET), second.bags());
  }

  /** All of a floor is primed, also where nothing is poured on it. */
  @Test
  void theTopLayerHasThePrimerOfTheFloorThatStandsOut() {
    Quantities quantities = quantities(new Wedge(-0.016, 0.016));
    assertEquals(4, quantities.lifts().get(0).area(), ROUNDING);
    assertEquals(
        quantities.primer().liquid() * 8 / 7.8,
        quantities.lifts().get(0).primer().liquid(),
        ROUNDING);
  }

  /**
   * An L-shaped floor of 15.10 m2 at 8 m2/L takes 1.9 L: open vocational flooring unit. Dense 6 to
   * 10 m2/L, thirsty 3 to 5 a coat: common practice, no source.
   */
  @Test
  void primerOfAnArea() {
    double area = 2.74 * 1.75 + 2.63 * 3.92;
    assertEquals(15.10, area, 0.01);
    assertEquals(0.0019, PrimerNeed.of(area, Absorbency.NORMAL, 1, SHEET).liquid(), 5e-5);
    assertEquals(new Primer(0.001, 1), PrimerNeed.of(10, Absorbency.LOW, 1, SHEET));
    assertEquals(new Primer(0.005, 2), PrimerNeed.of(10, Absorbency.HIGH, 1, SHEET));
    assertEquals(0.005 + 0.0025, PrimerNeed.of(10, Absorbency.HIGH, 3, SHEET).liquid(), ROUNDING);
  }

  /** Minimum 3 mm on concrete, 10 mm on wood: common practice, no source. */
  @Test
  void minimumDepthByBase() {
    Room wood = on(Substrate.WOOD);
    assertEquals(0.003, Minimums.depth(List.of(HALL, on(Substrate.CONCRETE)), SHEET));
    assertEquals(0.010, Minimums.depth(List.of(HALL, wood), SHEET));
    DataSheet thick = Sheets.withLifts(0.012, 0.030);
    assertEquals(0.012, Minimums.depth(List.of(wood), thick));
    assertEquals(0.012, Minimums.depth(List.of(), thick));
  }

  private Quantities quantities(Wedge wedge) {
    return quantities(wedge, wedge);
  }

  private Quantities quantities(Depths depths, Wedge wedge) {
    return Supplies.of(List.of(HALL, STORE), depths, wedge.summary(), SHEET)
        .quantities(new Bags(5, 4, 5, 6, 7, 2), List.of(), WAIT, Place.root(), findings);
  }

  private static Room on(Substrate substrate) {
    return new Room(
        "a",
        new Outline(List.of(ring(0, 0, 1, 1))),
        Optional.of(substrate),
        null,
        OptionalInt.empty(),
        null);
  }

  private static Room room(
      String id, List<List<Position>> rings, Absorbency absorbency, Opening... openings) {
    return new Room(
        id,
        new Outline(rings),
        Optional.empty(),
        absorbency,
        OptionalInt.empty(),
        List.of(openings));
  }

  private static Opening opening(String id, Position from, Position to) {
    return new Opening(id, from, to, OpeningKind.EXIT, Optional.empty());
  }

  private static List<Position> ring(double west, double south, double east, double north) {
    return List.of(
        new Position(west, south),
        new Position(east, south),
        new Position(east, north),
        new Position(west, north),
        new Position(west, south));
  }
}
