package dev.fillplane.fuzz;

import static dev.fillplane.fuzz.OddCase.answered;
import static dev.fillplane.fuzz.OddCase.refused;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fillplane.web.Trees;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Readings at places from which hardly a floor can be told. */
class OddSurveysTest {

  private static final String ROOM = Rings.polygon(Rings.box(0, 0, 6, 4));
  private static final int MANY = Integer.getInteger("fuzz.readings", 20_000);
  private static final IntToDoubleFunction FLAT = i -> -5;
  private static final IntToDoubleFunction ROUGH = i -> -5 - (i * 7 % 11);

  @TestFactory
  Stream<DynamicTest> few() {
    return OddCase.tests(
        "/v1/plans",
        Stream.of(
            refused("one", places(1, i -> 1, i -> 1, FLAT), "too-few-readings", "#/survey"),
            refused("two", places(2, i -> 1 + i, i -> 1, FLAT), "too-few-readings", "#/survey"),
            answered("three", places(3, i -> 1 + 2 * i, i -> 1 + i % 2, ROUGH)),
            refused(
                "three on a line",
                places(3, i -> 1 + i, i -> 1 + i, FLAT),
                "readings-on-a-line",
                "#/survey"),
            refused(
                "fifty on a line",
                places(50, i -> 0.1 * i, i -> 0.05 * i, ROUGH),
                "readings-on-a-line",
                "#/survey"),
            refused(
                "a line that is 1e-12 crooked",
                places(20, i -> 0.2 * i, i -> 1 + 1e-12 * (i % 2), ROUGH),
                "readings-on-a-line",
                "#/survey"),
            refused(
                "all at one place",
                places(20, i -> 2, i -> 2, ROUGH),
                "readings-on-a-line",
                "#/survey"),
            refused(
                "all within 1e-12",
                places(20, i -> 2 + 1e-12 * (i % 3), i -> 2 + 1e-12 * (i % 5), ROUGH),
                "readings-on-a-line",
                "#/survey"),
            refused(
                "outside",
                places(20, i -> 50 + i % 5, i -> 60 + i % 4, FLAT),
                "no-reading-in-a-room",
                "#/survey"),
            refused(
                "1e9 away",
                places(20, i -> 1e9 * (i % 5), i -> 1e9 * (i % 4), FLAT),
                "too-few-readings",
                "#/survey")));
  }

  @TestFactory
  Stream<DynamicTest> arrangements() {
    return OddCase.tests(
        "/v1/plans",
        Stream.of(
            answered(
                "a line that is 20 mm crooked",
                places(20, i -> 0.3 * i, i -> 1 + 0.02 * (i % 2), ROUGH)),
            answered("on one circle", circle(60, ROUGH)),
            answered("on one circle, flat", circle(60, FLAT)),
            answered(
                "on the outline",
                places(60, i -> onTheOutline(i)[0], i -> onTheOutline(i)[1], ROUGH)),
            answered(
                "in the corners", places(4, i -> i % 3 == 0 ? 0 : 6, i -> i < 2 ? 0 : 4, ROUGH)),
            answered(
                "pairs 1e-12 apart",
                places(40, i -> i % 5 + 1e-12 * (i % 2), i -> i / 10 + 0.5, ROUGH)),
            answered(
                "pairs 1 mm apart that differ by 30 mm",
                places(
                    40,
                    i -> i / 2 % 5 + 1e-3 * (i % 2),
                    i -> i / 10 + 0.5,
                    i -> -30 * ((i + i / 2) % 2) - i / 2 % 5)),
            refused(
                "one far from a crowd",
                places(
                    40,
                    i -> i == 0 ? 5.9 : 0.5 + 1e-3 * (i % 6),
                    i -> i == 0 ? 3.9 : 0.5 + 1e-3 * (i / 6),
                    ROUGH),
                "too-many-lifts",
                "#/material"),
            answered(
                "grid, flat",
                places(70, i -> 0.5 + 0.5 * (i % 10), i -> 0.4 + 0.5 * (i / 10), FLAT)),
            answered(
                "grid, 1e-9 rough",
                places(
                    70,
                    i -> 0.5 + 0.5 * (i % 10),
                    i -> 0.4 + 0.5 * (i / 10),
                    i -> -5 + 1e-9 * (i % 3))),
            refused(
                "one reading 5 m low",
                places(
                    70,
                    i -> 0.5 + 0.5 * (i % 10),
                    i -> 0.4 + 0.5 * (i / 10),
                    i -> i == 33 ? -5000 : -5),
                "too-many-lifts",
                "#/material"),
            answered(
                "checkered by 100 mm",
                places(
                    70, i -> 0.5 + 0.5 * (i % 10), i -> 0.4 + 0.5 * (i / 10), i -> i % 2 * -100.0)),
            answered(
                "elevations of 9,000 m",
                places(40, i -> i % 8 * 0.7, i -> i / 8 * 0.7, i -> 9e6 + i % 3)),
            refused(
                "elevations of 1e15",
                places(40, i -> i % 8 * 0.7, i -> i / 8 * 0.7, i -> 1e15 * (i % 3)),
                "out-of-range",
                "#/survey/elevations/1/elevation")));
  }

  @TestFactory
  Stream<DynamicTest> dense() {
    return OddCase.tests(
        "/v1/depth-fields",
        Stream.of(
            answered("2,000 on one circle by kriging", circle(2_000, ROUGH)),
            answered("on half a circle", table(MANY, OddSurveysTest::onArc)),
            answered("a small circle in a grid", table(MANY, OddSurveysTest::smallCircleInGrid)),
            answered("many small circles", table(MANY, OddSurveysTest::onSmallCircles)),
            answered("along the walls", table(MANY, OddSurveysTest::onTheWalls)),
            answered("by chance", table(MANY, OddSurveysTest::byChance)),
            answered("on one circle", table(MANY, OddSurveysTest::onCircle)),
            answered("on one circle, flat", table(MANY, (i, n) -> flat(onCircle(i, n)))),
            answered("on two circles", table(MANY, OddSurveysTest::onTwoCircles)),
            answered("on a spiral", table(MANY, OddSurveysTest::onSpiral)),
            answered("on a grid", table(MANY, OddSurveysTest::onGrid)),
            answered("in two lines", table(MANY, OddSurveysTest::onTwoLines)),
            answered("on a parabola", table(MANY, OddSurveysTest::onParabola)),
            answered("in a spot", table(MANY, OddSurveysTest::inASpot)),
            answered("within 1e-9", table(MANY, OddSurveysTest::almostAtOnePlace)),
            answered("at four places", table(MANY, OddSurveysTest::atFourPlaces))));
  }

  /** A row of a table: x, y and elevation. */
  private interface Row {
    double[] of(int number, int count);
  }

  private static double[] flat(double[] row) {
    return new double[] {row[0], row[1], -5};
  }

  private static double[] onCircle(int i, int n) {
    double angle = 2 * Math.PI * i / n;
    return new double[] {3 + 1.9 * Math.cos(angle), 2 + 1.9 * Math.sin(angle), -5 - i % 7};
  }

  private static double[] onTwoCircles(int i, int n) {
    double[] row = onCircle(i, n);
    double share = i % 2 == 0 ? 1 : 0.5;
    return new double[] {3 + share * (row[0] - 3), 2 + share * (row[1] - 2), row[2]};
  }

  private static double[] onArc(int i, int n) {
    return onCircle(i, 2 * n);
  }

  /** All but 2,000 of them on a circle between the places of a grid. */
  private static double[] smallCircleInGrid(int i, int n) {
    double[] row = onCircle(i, n - 2_000);
    return i >= n - 2_000
        ? onGrid((i - n + 2_000) * (n / 2_000), n)
        : new double[] {2.81 + 0.05 * (row[0] - 3), 2.12 + 0.05 * (row[1] - 2), row[2]};
  }

  private static double[] onSmallCircles(int i, int n) {
    double[] row = onCircle(i / 200, n / 200);
    double x = 0.15 + 0.3 * (i % 20);
    double y = 0.2 + 0.4 * (i % 200 / 20);
    return new double[] {x + 0.07 * (row[0] - 3), y + 0.07 * (row[1] - 2), row[2]};
  }

  private static double[] onTheWalls(int i, int n) {
    double[] spot = onTheOutline(i % 60);
    double more = (double) i / n / 15;
    boolean east = i % 60 / 15 % 2 == 0;
    return new double[] {spot[0] + (east ? more : 0), spot[1] + (east ? 0 : more), -5 - i % 7};
  }

  private static double[] byChance(int i, int n) {
    Random random = new Random(31L * i + 7);
    random.nextInt();
    return new double[] {6 * random.nextDouble(), 4 * random.nextDouble(), -5 - i % 7};
  }

  private static double[] onSpiral(int i, int n) {
    double angle = 40 * Math.PI * i / n;
    double radius = 1.9 * i / n;
    return new double[] {3 + radius * Math.cos(angle), 2 + radius * Math.sin(angle), -5 - i % 3};
  }

  private static double[] onGrid(int i, int n) {
    return new double[] {6.0 * (i % 200) / 200, 4.0 * (i / 200) / (n / 200), -5 - i % 7};
  }

  private static double[] onTwoLines(int i, int n) {
    return new double[] {6.0 * i / n, 1 + 2 * (i % 2), -5 - i % 7};
  }

  private static double[] onParabola(int i, int n) {
    double x = 6.0 * i / n;
    return new double[] {x, x * x / 9, -5 - i % 7};
  }

  private static double[] inASpot(int i, int n) {
    double[] row = onGrid(i, n);
    return i < 3
        ? new double[] {3 * i, 4 - 4 * (i % 2), -5}
        : new double[] {row[0] / 1e3, row[1] / 1e3, -5};
  }

  private static double[] almostAtOnePlace(int i, int n) {
    Random random = new Random(i);
    double size = i < 4 ? 3 : 1e-9;
    return new double[] {
      3 + size * (random.nextDouble() - 0.5), 2 + size * (random.nextDouble() - 0.5), -5
    };
  }

  private static double[] atFourPlaces(int i, int n) {
    return new double[] {i % 2 * 6, i / 2 % 2 * 4, -5 - i % 4};
  }

  private static ObjectNode circle(int count, IntToDoubleFunction elevation) {
    return places(count, i -> onCircle(i, count)[0], i -> onCircle(i, count)[1], elevation);
  }

  private static double[] onTheOutline(int i) {
    double along = i % 15 / 15.0;
    return switch (i / 15) {
      case 0 -> new double[] {6 * along, 0};
      case 1 -> new double[] {6, 4 * along};
      case 2 -> new double[] {6 - 6 * along, 4};
      default -> new double[] {0, 4 - 4 * along};
    };
  }

  private static ObjectNode places(
      int count, IntToDoubleFunction x, IntToDoubleFunction y, IntToDoubleFunction elevation) {
    ObjectNode request = floor();
    request.set("survey", Trees.of("{'elevations':[]}"));
    for (int i = 0; i < count; i++) {
      OddFloor.reading(request, x.applyAsDouble(i), y.applyAsDouble(i), elevation.applyAsDouble(i));
    }
    return request;
  }

  private static ObjectNode table(int count, Row row) {
    ObjectNode request = floor();
    request.set("survey", Trees.of("{'table':{'columns':['x','y','elevation'],'values':[]}}"));
    ArrayNode values = request.putArray("gone");
    for (int i = 0; i < count; i++) {
      for (double number : row.of(i, count)) {
        values.add(number);
      }
    }
    request.remove("gone");
    ((ObjectNode) request.at("/survey/table")).set("values", values);
    return request;
  }

  private static ObjectNode floor() {
    return OddFloor.add(Trees.of("{'units':'metric','rooms':[]}"), "a", ROOM);
  }
}
