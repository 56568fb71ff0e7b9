package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Volumes, elevations and level books through the service against closed forms and references. */
class ClosedFormTest {

  /** Of the volume of the case. */
  private static final double VOLUME = 1e-3;

  /** In mm. */
  private static final double ELEVATION = 0.01;

  /** Corner points of the room of the cases: legs of 4 m and 3 m, so 6 m2. */
  private static final double[][] CORNERS = {{0, 0}, {4, 0}, {0, 3}};

  private static final double AREA = 6;

  // --- wedge and pyramid

  /**
   * Prism clipped by the target, with the depths of its corners in mm and the volume in L; derived
   * in closed form and checked by a sum over 360,000 cells.
   */
  @ParameterizedTest
  @CsvSource({
    "10, -5, -5, 0, 8.88889",
    "10, 4, -8, 12, 16.74074",
    "9, 6, 3, 36, 36",
    "12, 0, -6, 12, 16",
    "-1, -2, -3, -12, 0"
  })
  void clippedPrism(double a, double b, double c, double net, double filled) {
    JsonNode depth = triangle(a, b, c);
    assertEquals(filled, depth.get("volume").doubleValue(), VOLUME * filled + 1e-9);
    double ground = depth.get("grindVolume").doubleValue();
    assertEquals(net, depth.get("volume").doubleValue() - ground, VOLUME * Math.abs(net) + 1e-9);
    assertEquals(AREA, depth.get("area").doubleValue(), 1e-9);
  }

  /** Random depths of the corners, of every sign. */
  @Test
  void clippedPrismsOfAnyDepth() {
    Random random = new Random(4);
    for (int i = 0; i < 40; i++) {
      double[] d = random.doubles(3, -12, 15).toArray();
      double expected = clipped(d[0], d[1], d[2]);
      double volume = triangle(d[0], d[1], d[2]).get("volume").doubleValue();
      assertEquals(expected, volume, VOLUME * expected + 1e-9, Arrays.toString(d));
    }
  }

  /** Litres under the target; mm and m2. */
  private static double clipped(double first, double second, double third) {
    double[] d = {first, second, third};
    Arrays.sort(d);
    double net = AREA * (d[0] + d[1] + d[2]) / 3;
    if (d[2] <= 0) {
      return 0;
    }
    if (d[1] <= 0) {
      return AREA / 3 * Math.pow(d[2], 3) / ((d[2] - d[1]) * (d[2] - d[0]));
    }
    if (d[0] < 0) {
      return net + AREA / 3 * Math.pow(-d[0], 3) / ((d[1] - d[0]) * (d[2] - d[0]));
    }
    return net;
  }

  /** The floor through three corners, read there and at a fourth place in its plane. */
  private static JsonNode triangle(double a, double b, double c) {
    ObjectNode request = request("[[[0,0],[4,0],[0,3],[0,0]]]");
    double[] depths = {a, b, c};
    for (int i = 0; i < 3; i++) {
      read(request, CORNERS[i][0], CORNERS[i][1], -depths[i]);
    }
    read(request, 1, 0.75, -(a / 2 + b / 4 + c / 4));
    return field(request).get("depth");
  }

  // --- planes of any tilt

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void planeOfAnyTilt(int seed) {
    Random random = new Random(seed);
    double slopeX = random.nextDouble(-40, 40);
    double slopeY = random.nextDouble(-40, 40);
    double zero = random.nextDouble(-300, 300);
    ObjectNode request = request("[[[0,0],[5,0],[5,4],[0,4],[0,0]]]");
    read(request, 0.2, 0.3, zero + 0.2 * slopeX + 0.3 * slopeY);
    for (int i = 0; i < 3 + 4 * seed; i++) {
      double x = random.nextDouble(5);
      double y = random.nextDouble(4);
      read(request, x, y, zero + slopeX * x + slopeY * y);
    }
    double target = zero + 2.5 * slopeX + 2 * slopeY + random.nextDouble(-20, 20);
    target(request).put("elevation", target);
    for (int i = 0; i < 10; i++) {
      probe(request, random.nextDouble(5), random.nextDouble(4));
    }
    JsonNode depth = field(request).get("depth");
    probesLieOn(request, depth, zero, slopeX, slopeY);
    double expected = clipped(rectangle(target - zero, slopeX, slopeY));
    assertTrue(expected > 1, "nothing to compare: " + expected);
    assertEquals(expected, depth.get("volume").doubleValue(), VOLUME * expected);
  }

  private static void probesLieOn(
      ObjectNode request, JsonNode depth, double zero, double slopeX, double slopeY) {
    assertEquals(10, depth.get("probes").size());
    for (int i = 0; i < 10; i++) {
      JsonNode at = request.get("probes").get(i);
      double plane = zero + slopeX * at.get("x").doubleValue() + slopeY * at.get("y").doubleValue();
      double told = depth.get("probes").get(i).get("elevation").doubleValue();
      assertEquals(plane, told, ELEVATION, at.toString());
    }
  }

  /** Depths at the corners of the rectangle of 5 m by 4 m, in turn. */
  private static double[] rectangle(double atZero, double slopeX, double slopeY) {
    return new double[] {
      atZero, atZero - 5 * slopeX, atZero - 5 * slopeX - 4 * slopeY, atZero - 4 * slopeY
    };
  }

  /** The rectangle as two triangles of 10 m2 each. */
  private static double clipped(double[] d) {
    return 10 / AREA * (clipped(d[0], d[1], d[2]) + clipped(d[0], d[2], d[3]));
  }

  // --- kriging

  /**
   * Reference: the R package gstat and an independent linear solve, which agree to 1e-12: spherical
   * variogram of partial sill 4, range 4, nugget 0.5. Here plan is in m and height in mm. Its
   * variance is that of a new reading, ours that of the floor, less by the nugget.
   */
  @Test
  void smallKrigingCase() {
    JsonNode probes = kriged("none").at("/depth/probes");
    double[] mean = {8.43674721408, 6.02430182124, 10.6166183005};
    double[] variance = {2.39601841991, 2.17619528047, 2.39862420611};
    for (int i = 0; i < 3; i++) {
      assertEquals(mean[i], probes.get(i).get("elevation").doubleValue(), 1e-6);
      double deviation = probes.get(i).get("deviation").doubleValue();
      assertEquals(variance[i] - 0.5, deviation * deviation, 1e-6);
    }
  }

  /** The same with a linear drift: universal kriging; same reference. */
  @Test
  void smallKrigingCaseWithDrift() {
    JsonNode probes = kriged("linear").at("/depth/probes");
    double[] mean = {8.52781222312, 6.03909718738, 10.8298510941};
    for (int i = 0; i < 3; i++) {
      assertEquals(mean[i], probes.get(i).get("elevation").doubleValue(), 1e-6);
    }
  }

  private static JsonNode kriged(String drift) {
    ObjectNode request = request("[[[0,0],[4,0],[4,3],[0,3],[0,0]]]");
    double[][] readings = {{0, 0, 3}, {4, 0, 7}, {0, 3, 5}, {4, 3, 12}, {2, 1, 9}, {1, 2, 6}};
    for (double[] reading : readings) {
      read(request, reading[0], reading[1], reading[2]);
    }
    target(request).put("elevation", 20);
    request.set(
        "surface",
        Trees.of("{'variogram':{'shape':'spherical','nugget':0.5,'sill':4,'range':4}}")
            .put("drift", drift));
    probe(request, 2, 2);
    probe(request, 1, 1);
    probe(request, 3.5, 2.5);
    return field(request);
  }

  // --- level books

  /** Three setups of a college example, inputs confirmed; results by hand from HI = elev + BS. */
  @Test
  void threeSetups() {
    JsonNode book =
        book(
            "metric",
            "TBM 50000",
            "1 TBM 1400 A 1235 B 1870",
            "2 B 1355 C 3340 D 1975",
            "3 D 585 E 855");
    planes(book, 51_400, 50_885, 49_495);
    points(book, "TBM 50000 A 50165 B 49530 C 47545 D 48910 E 48640");
    assertTrue(book.path("misclosure").isMissingNode());
  }

  /**
   * A loop of 1.5 km that comes back 10 mm high, inside third order (12 mm sqrt(K)); Ghilani and
   * Wolf, Elementary Surveying 14e, problem 5.12: inputs confirmed, results derived by hand. Equal
   * setups share the 10 mm: the book's 851.895 of TP1 becomes 851.893, and so on.
   */
  @Test
  void loop() {
    JsonNode book =
        book(
            "metric",
            "BM7 852045",
            "1 BM7 4388 TP1 4538",
            "2 TP1 6907 BM8 8800",
            "3 BM8 4680 TP2 5978",
            "4 TP2 3730 TP3 5245",
            "5 TP3 8464 BM7 3598");
    assertEquals(10, book.at("/misclosure/value").doubleValue(), 1e-6);
    assertEquals(12 * Math.sqrt(1.5), book.at("/misclosure/limit").doubleValue(), 1e-6);
    points(book, "BM7 852045 TP1 851893 BM8 849998 TP2 848698 TP3 847181");
  }

  /** One setup in feet, confirmed: HI 828.42 ft, X 827.22 ft; on the wire inches. */
  @Test
  void oneSetupInFeet() {
    JsonNode book = book("us", "BM " + 820 * 12, "1 BM " + 8.42 * 12 + " X " + 1.20 * 12);
    planes(book, 828.42 * 12);
    points(book, "BM " + 820 * 12 + " X " + 827.22 * 12);
  }

  /** Adjusts setups told as {@code name point reading point reading ...}. */
  private static JsonNode book(String units, String benchmark, String... setups) {
    ObjectNode request = Trees.of("{'survey':{'setups':[],'loopLength':1500}}").put("units", units);
    ObjectNode survey = survey(request);
    String[] mark = benchmark.split(" ", -1);
    survey
        .putArray("benchmarks")
        .addObject()
        .put("point", mark[0])
        .put("elevation", Double.parseDouble(mark[1]));
    for (String told : setups) {
      String[] parts = told.split(" ", -1);
      ObjectNode setup = survey.withArray("setups").addObject().put("id", parts[0]);
      for (int i = 1; i < parts.length; i += 2) {
        setup
            .withArray("readings")
            .addObject()
            .put("point", parts[i])
            .put("reading", Double.parseDouble(parts[i + 1]));
      }
    }
    return answer("/v1/elevations", request).get("elevations");
  }

  private static void planes(JsonNode book, double... elevations) {
    assertEquals(elevations.length, book.get("setups").size());
    for (int i = 0; i < elevations.length; i++) {
      double plane = book.get("setups").get(i).get("planeElevation").doubleValue();
      assertEquals(elevations[i], plane, 1e-6);
    }
  }

  private static void points(JsonNode book, String expected) {
    String[] parts = expected.split(" ", -1);
    assertEquals(parts.length / 2, book.get("points").size());
    for (int i = 0; i < parts.length; i += 2) {
      JsonNode point = book.get("points").get(i / 2);
      assertEquals(parts[i], point.get("point").textValue());
      double elevation = point.get("elevation").doubleValue();
      assertEquals(Double.parseDouble(parts[i + 1]), elevation, 1e-6, parts[i]);
    }
  }

  // --- how

  /** One room, a level target at 0 with no least depth, and no reading yet. */
  private static ObjectNode request(String rings) {
    ObjectNode request =
        Trees.of(
            "{'units':'metric','rooms':[{'id':'room','outline':{'type':'Polygon','coordinates':"
                + rings
                + "}}],'survey':{'elevations':[]}}");
    request.putObject("target").put("shape", "given").put("elevation", 0);
    return request;
  }

  private static ObjectNode survey(ObjectNode request) {
    return (ObjectNode) request.get("survey");
  }

  private static ObjectNode target(ObjectNode request) {
    return (ObjectNode) request.get("target");
  }

  private static void read(ObjectNode request, double x, double y, double elevation) {
    ArrayNode readings = survey(request).withArray("elevations");
    readings
        .addObject()
        .put("point", "r" + readings.size())
        .put("x", x)
        .put("y", y)
        .put("elevation", elevation);
  }

  private static void probe(ObjectNode request, double x, double y) {
    ArrayNode probes = request.withArray("probes");
    probes.addObject().put("id", "p" + probes.size()).put("x", x).put("y", y);
  }

  private static JsonNode field(ObjectNode request) {
    return answer("/v1/depth-fields", request);
  }

  private static JsonNode answer(String path, ObjectNode request) {
    Response answer = RunningService.post(path, request);
    assertEquals(200, answer.statusCode(), answer.asString());
    return Trees.of(answer);
  }
}
