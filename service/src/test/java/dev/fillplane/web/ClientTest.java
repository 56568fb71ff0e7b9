package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.fillplane.client.FillplaneClient;
import dev.fillplane.client.Problem;
import dev.fillplane.client.ProblemException;
import dev.fillplane.client.generated.ApiClient;
import dev.fillplane.client.generated.api.CataloguesApi;
import dev.fillplane.client.generated.api.HealthApi;
import dev.fillplane.client.generated.api.PartsApi;
import dev.fillplane.client.generated.api.PicturesApi;
import dev.fillplane.client.generated.api.PlansApi;
import dev.fillplane.client.generated.model.AirCheck;
import dev.fillplane.client.generated.model.AirCheckRequest;
import dev.fillplane.client.generated.model.BagCount;
import dev.fillplane.client.generated.model.BagCountRequest;
import dev.fillplane.client.generated.model.Capabilities;
import dev.fillplane.client.generated.model.Comparison;
import dev.fillplane.client.generated.model.ComparisonRequest;
import dev.fillplane.client.generated.model.DepthFieldAnswer;
import dev.fillplane.client.generated.model.DustCheck;
import dev.fillplane.client.generated.model.DustCheckRequest;
import dev.fillplane.client.generated.model.ElevationsAnswer;
import dev.fillplane.client.generated.model.ElevationsRequest;
import dev.fillplane.client.generated.model.LiftingCheck;
import dev.fillplane.client.generated.model.LiftingCheckRequest;
import dev.fillplane.client.generated.model.LineProblem;
import dev.fillplane.client.generated.model.MixCheck;
import dev.fillplane.client.generated.model.MixCheckRequest;
import dev.fillplane.client.generated.model.Plan;
import dev.fillplane.client.generated.model.PlanRequest;
import dev.fillplane.client.generated.model.PlanShapeCollection;
import dev.fillplane.client.generated.model.PlanValidation;
import dev.fillplane.client.generated.model.PourCheck;
import dev.fillplane.client.generated.model.PourCheckRequest;
import dev.fillplane.client.generated.model.SurveyPlan;
import dev.fillplane.client.generated.model.SurveyPlanRequest;
import dev.fillplane.client.generated.model.UnitSystem;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The generated client against the running service. */
class ClientTest {

  private static final ObjectMapper JSON = ApiClient.createDefaultObjectMapper();
  private static final FillplaneClient CLIENT = FillplaneClient.at(RunningService.uri()).build();
  private static final PlansApi PLANS = CLIENT.api(PlansApi::new);
  private static final PicturesApi PICTURES = CLIENT.api(PicturesApi::new);
  private static final PartsApi PARTS = CLIENT.api(PartsApi::new);
  private static final CataloguesApi CATALOGUES = CLIENT.api(CataloguesApi::new);
  private static final HealthApi HEALTH = CLIENT.api(HealthApi::new);

  @ParameterizedTest
  @ValueSource(strings = {"metric", "us"})
  void plansTheSample(String units) {
    PlanRequest request = example("sample-" + units + ".json", PlanRequest.class);
    Plan plan = CLIENT.call(() -> PLANS.makePlan(request));
    assertEquals(units, plan.getUnits());
    assertEquals("sample floor (invented)", plan.getReference());
    assertEquals(units.equals("metric") ? "mm" : "[in_i]", plan.getUnitCodes().get("height"));
    everyPartIsThere(plan);
  }

  private static void everyPartIsThere(Plan plan) {
    assertEquals(57, plan.getElevations().getPoints().size());
    assertNotNull(plan.getElevations().getMisclosure());
    assertNotNull(plan.getSurface().getVariogram());
    assertFalse(plan.getTarget().getBoundBy().isEmpty());
    assertEquals(4, plan.getDepth().getProbes().size());
    assertFalse(plan.getDepth().getContours().getFeatures().isEmpty());
    assertEquals(
        plan.getDepth().getGrid().getColumns() * plan.getDepth().getGrid().getRows(),
        plan.getDepth().getGrid().getDepths().size());
    assertEquals(3, plan.getQuantities().getRooms().size());
    assertEquals(3, plan.getQuantities().getDams().size());
    assertTrue(plan.getQuantities().getBags().getOrder() > 0);
    assertTrue(plan.getMix().getWorkingTime() > plan.getMix().getHealingTime());
    assertEquals(3, plan.getPour().getBays().size());
    assertFalse(plan.getPour().getBatches().isEmpty());
    assertFalse(plan.getPour().getReasons().isEmpty());
    assertEquals(
        List.of("no-pour", "grind-and-patch", "flat", "level"),
        plan.getOptions().stream().map(option -> option.getName()).toList());
    assertFalse(plan.getPins().isEmpty());
    assertFalse(plan.getRails().isEmpty());
    assertEquals("within", plan.getFlatness().getAfter().getVerdict());
    assertTrue(plan.getDrying().getWalkOn() < plan.getDrying().getCovering());
    assertFalse(plan.getSafety().isEmpty());
    assertFalse(plan.getWarnings().isEmpty());
    assertTrue(plan.getComputed().getInputDigest().matches("[0-9a-f]{64}"));
    assertFalse(plan.getComputed().getMethods().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(strings = {"metric", "us"})
  void drawsTheDepthMap(String units) throws Exception {
    PlanRequest request = example("sample-" + units + ".json", PlanRequest.class);
    File map = CLIENT.call(() -> PICTURES.drawDepthMap(request, null));
    var document = DocumentBuilderFactory.newDefaultNSInstance().newDocumentBuilder().parse(map);
    assertEquals("svg", document.getDocumentElement().getLocalName());
    assertTrue(document.getElementsByTagNameNS("*", "path").getLength() > 10);
    Files.delete(map.toPath());
  }

  @Test
  void drawsTheLayersThatAreAskedFor() throws Exception {
    PlanRequest request = example("sample-metric.json", PlanRequest.class);
    File map = CLIENT.call(() -> PICTURES.drawDepthMap(request, List.of("next", "deviation")));
    String svg = Files.readString(map.toPath());
    assertTrue(svg.contains("take a reading here"));
    assertTrue(svg.contains("floor unsure by 2 mm or more"));
    assertFalse(svg.contains("contour, every"));
    Files.delete(map.toPath());
  }

  @Test
  void printsThePourSheet() throws Exception {
    PlanRequest request = example("sample-metric.json", PlanRequest.class);
    File page = CLIENT.call(() -> PICTURES.printPourPage(request, "letter"));
    assertTrue(Files.readString(page.toPath()).contains("@page { size: letter; }"));
    File sheet = CLIENT.call(() -> PICTURES.printPourSheet(request, null));
    byte[] pdf = Files.readAllBytes(sheet.toPath());
    assertEquals("%PDF-1.", new String(pdf, 0, 7, StandardCharsets.US_ASCII));
    Files.delete(page.toPath());
    Files.delete(sheet.toPath());
  }

  @Test
  void drawsTheTimeline() throws Exception {
    PlanRequest request = example("sample-us.json", PlanRequest.class);
    File picture = CLIENT.call(() -> PICTURES.drawTimeline(request));
    assertTrue(Files.readString(picture.toPath()).contains("Who does what when"));
    Files.delete(picture.toPath());
  }

  @Test
  void tracesTheShapes() {
    PlanRequest request = example("sample-metric.json", PlanRequest.class);
    PlanShapeCollection shapes = CLIENT.call(() -> PLANS.tracePlanShapes(request));
    Plan plan = CLIENT.call(() -> PLANS.makePlan(request));
    assertEquals("FeatureCollection", shapes.getType());
    assertEquals(
        plan.getPins().stream().map(pin -> pin.getHeight()).toList(),
        shapes.getFeatures().stream()
            .map(shape -> shape.getProperties())
            .filter(properties -> properties.getKind().equals("pin"))
            .map(properties -> properties.getHeight())
            .toList());
  }

  @Test
  void listsTheBatches() throws Exception {
    PlanRequest request = example("sample-us.json", PlanRequest.class);
    File table = CLIENT.call(() -> PLANS.listBatches(request));
    List<String> lines = Files.readAllLines(table.toPath());
    Plan plan = CLIENT.call(() -> PLANS.makePlan(request));
    assertTrue(lines.get(0).startsWith("bay,batch,bags,water (qt),mix start (min),"), lines.get(0));
    assertEquals(plan.getPour().getBatches().size(), lines.size() - 1);
    Files.delete(table.toPath());
  }

  /** All lines are sent before an answer is read, so these must be few. */
  @Test
  void plansLineByLine() throws Exception {
    String lines = example("rectangle.json") + "\n{}\n" + example("sample-us.json");
    File answers = CLIENT.call(() -> PLANS.streamPlans(lines));
    List<String> told = Files.readAllLines(answers.toPath());
    assertEquals(3, told.size());
    Plan plan = JSON.readValue(told.get(2), Plan.class);
    assertEquals("us", plan.getUnits());
    LineProblem problem = JSON.readValue(told.get(1), LineProblem.class);
    assertEquals(2, problem.getLine());
    assertEquals("missing", problem.getErrors().get(0).getCode());
    Files.delete(answers.toPath());
  }

  @Test
  void adjustsElevations() {
    ElevationsRequest request = example("elevations.json", ElevationsRequest.class);
    ElevationsAnswer answer = CLIENT.call(() -> PARTS.adjustElevations(request));
    assertEquals(7, answer.getElevations().getPoints().size());
    assertEquals(0, answer.getElevations().getPoints().get(0).getElevation());
    // The two setups disagree a little, and a tilt of the lasers takes its part of it.
    assertEquals(-12.5, answer.getElevations().getPoints().get(1).getElevation(), 0.01);
    assertEquals(1250, answer.getElevations().getSetups().get(0).getPlaneElevation(), 1e-9);
  }

  @Test
  void findsDepths() {
    PlanRequest request = example("rectangle.json", PlanRequest.class);
    DepthFieldAnswer answer = CLIENT.call(() -> PARTS.makeDepthField(request));
    assertEquals(12, answer.getDepth().getArea(), 1e-9);
    assertEquals("level", answer.getTarget().getShape());
    assertTrue(answer.getDepth().getMaximum() > answer.getDepth().getMean());
  }

  /** 40 m2 of 6 mm are 240 L; a bag of 25 kg with 5 L at 2 kg/L yields 15 L: 16 bags and more. */
  @Test
  void countsBags() {
    BagCountRequest request = example("bag-count.json", BagCountRequest.class);
    BagCount count = CLIENT.call(() -> PARTS.countBags(request));
    assertEquals(240, count.getFill(), 1e-9);
    assertTrue(count.getBags().getLikely() >= 16, "likely " + count.getBags().getLikely());
    assertTrue(count.getBags().getOrder() > count.getBags().getLikely());
    assertEquals(25.0 * count.getBags().getOrder(), count.getMass(), 1e-9);
  }

  @Test
  void plansASurvey() {
    SurveyPlanRequest request = example("survey-plan.json", SurveyPlanRequest.class);
    SurveyPlan plan = CLIENT.call(() -> PARTS.planSurvey(request));
    assertEquals(plan.getReadings(), plan.getPoints().size());
    assertTrue(plan.getSpread() <= 1.5, "spread " + plan.getSpread());
    assertEquals("passage", plan.getPoints().get(0).getRoom(), "begins at the exit");
    assertTrue(plan.getWalk() > 20);
  }

  @Test
  void tellsWhereMoreReadingsHelp() {
    PlanRequest request = example("sample-metric.json", PlanRequest.class);
    var surface = CLIENT.call(() -> PLANS.makePlan(request)).getSurface();
    assertEquals(3, surface.getNextReadings().size());
    assertTrue(surface.getNextReadings().get(0).getSaves() > 0);
    assertEquals(
        surface.getDeviations().getColumns() * surface.getDeviations().getRows(),
        surface.getDeviations().getDeviations().size());
  }

  @Test
  void checksAMix() {
    MixCheckRequest request = example("mix-check.json", MixCheckRequest.class);
    MixCheck check = CLIENT.call(() -> PARTS.checkMix(request));
    assertTrue(check.getMixTemperature() > 24, "warmer than its water");
    assertTrue(check.getNeeded().getWaterTemperature() < 24, "cooler water is needed");
    assertTrue(check.getWorkingTime() > 0);
  }

  @Test
  void checksTheAir() {
    AirCheckRequest request = example("air-check.json", AirCheckRequest.class);
    AirCheck check = CLIENT.call(() -> PARTS.checkAir(request));
    assertEquals("tight", check.getVerdict());
    assertTrue(check.getEvaporation() > check.getLimit().getCaution());
    assertEquals(24 - check.getDewPoint(), check.getMargin(), 1e-9);
    AirCheckRequest damp = example("air-check-us.json", AirCheckRequest.class);
    assertEquals("breaks", CLIENT.call(() -> PARTS.checkAir(damp)).getVerdict());
  }

  @Test
  void checksALift() {
    LiftingCheck check =
        CLIENT.call(
            () -> PARTS.checkLifting(example("lifting-check.json", LiftingCheckRequest.class)));
    assertTrue(check.getApplies());
    assertTrue(check.getIndex() > 2);
    assertEquals("smaller-bag", check.getAlternatives().get(0).getWay());
    LiftingCheckRequest bucket = example("lifting-check-us.json", LiftingCheckRequest.class);
    assertEquals(2, CLIENT.call(() -> PARTS.checkLifting(bucket)).getWhyNot().size());
  }

  @Test
  void checksDust() {
    DustCheck check =
        CLIENT.call(() -> PARTS.checkDust(example("dust-check.json", DustCheckRequest.class)));
    assertEquals(125, check.getAirflow(), 1e-9);
    assertEquals(10, check.getRespirator().getApf());
  }

  @Test
  void checksAPour() {
    PourCheckRequest request = example("pour-check.json", PourCheckRequest.class);
    PourCheck check = CLIENT.call(() -> PARTS.checkPour(request));
    assertNotEquals("holds", check.getVerdict());
    assertFalse(check.getChanges().isEmpty());
    assertEquals(75 / (1.2 * 8), check.getLength(), 1e-9);
    PourCheckRequest us = example("pour-check-us.json", PourCheckRequest.class);
    assertEquals(9, CLIENT.call(() -> PARTS.checkPour(us)).getHealingTime(), 1e-9);
  }

  @Test
  void compares() {
    ComparisonRequest request = example("comparison.json", ComparisonRequest.class);
    Comparison comparison = CLIENT.call(() -> PLANS.comparePlans(request));
    assertEquals(4, comparison.getRows().size());
    assertEquals("base", comparison.getRows().get(0).getName());
    assertEquals("EUR", comparison.getRows().get(0).getCost().getCurrency());
  }

  @Test
  void validates() {
    PlanRequest good = example("sample-metric.json", PlanRequest.class);
    PlanValidation valid = CLIENT.call(() -> PLANS.validatePlan(good));
    assertTrue(valid.getValid());
    assertEquals(List.of(), valid.getErrors());
    PlanRequest bad = example("bad-request.json", PlanRequest.class);
    PlanValidation refused = CLIENT.call(() -> PLANS.validatePlan(bad));
    assertFalse(refused.getValid());
    assertEquals(
        List.of("x-without-y", "unknown-benchmark"),
        refused.getErrors().stream().map(error -> error.getCode()).toList());
  }

  @Test
  void refusalIsAProblemWithItsErrors() {
    PlanRequest bad = example("bad-request.json", PlanRequest.class);
    ProblemException problem =
        assertThrows(ProblemException.class, () -> CLIENT.call(() -> PLANS.makePlan(bad)));
    assertEquals(422, problem.status());
    assertEquals("urn:fillplane:problem:unanswerable", problem.type().toString());
    assertEquals(
        List.of("x-without-y", "unknown-benchmark"),
        problem.errors().stream().map(Problem::code).toList());
    assertEquals("#/survey/benchmarks/0/point", problem.errors().get(1).pointer());
    assertTrue(problem.getMessage().contains("mark"), problem.getMessage());
  }

  @Test
  void listsWhatMayBeNamed() {
    var materials = CLIENT.call(() -> CATALOGUES.listMaterials(UnitSystem.METRIC)).getItems();
    Set<String> ids = materials.stream().map(sheet -> sheet.getId()).collect(Collectors.toSet());
    assertTrue(ids.contains("cement-standard-25"), ids.toString());
    var coverings = CLIENT.call(() -> CATALOGUES.listCoverings(null)).getItems();
    assertTrue(coverings.stream().anyMatch(item -> item.getId().equals("wood-glued")));
    var substrates = CLIENT.call(() -> CATALOGUES.listSubstrates(null)).getItems();
    assertTrue(substrates.stream().anyMatch(item -> item.getId().equals("concrete")));
    var methods = CLIENT.call(CATALOGUES::listMethods).getItems();
    Plan plan = CLIENT.call(() -> PLANS.makePlan(example("rectangle.json", PlanRequest.class)));
    assertEquals(
        methods.stream().map(method -> method.getId()).toList(), plan.getComputed().getMethods());
  }

  @Test
  void tellsWhatItCanDo() {
    Capabilities capabilities = CLIENT.call(CATALOGUES::getCapabilities);
    assertTrue(capabilities.getOperations().contains("makePlan"));
    assertTrue(capabilities.getOperations().contains("planSurvey"));
    assertEquals(31, capabilities.getOperations().size());
    assertFalse(capabilities.getDefaults().isEmpty());
    assertFalse(capabilities.getRanges().isEmpty());
    assertEquals(Settings.BODY_BYTES, capabilities.getLimits().getBodyBytes());
  }

  @Test
  void isAliveAndReady() {
    assertEquals("up", CLIENT.call(HEALTH::getLiveness).getState());
    assertEquals("up", CLIENT.call(HEALTH::getReadiness).getState());
  }

  @Test
  void contractIsServed() throws Exception {
    File contract = CLIENT.call(CATALOGUES::getContract);
    assertTrue(Files.readString(contract.toPath()).startsWith("openapi: \"3.0"));
    Files.delete(contract.toPath());
  }

  private static String example(String name) {
    return RunningService.example(name).toString();
  }

  private static <T> T example(String name, Class<T> type) {
    return JSON.convertValue(RunningService.example(name), type);
  }
}
