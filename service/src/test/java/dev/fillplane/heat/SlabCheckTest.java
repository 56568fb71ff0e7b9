package dev.fillplane.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Go or no-go of a slab of 60 m2. */
class SlabCheckTest {

  private static final OptionalDouble NONE = OptionalDouble.empty();

  private final Findings findings = new Findings();

  /** ASTM F2170 section 10.1, from two checklists; the reading of "each further" is derived. */
  @Test
  void testsByArea() {
    double squareFoot = 0.3048 * 0.3048;
    assertEquals(3, SlabCheck.tests(1000 * squareFoot));
    assertEquals(4, SlabCheck.tests(1001 * squareFoot));
    assertEquals(5, SlabCheck.tests(2500 * squareFoot));
    assertEquals(12, SlabCheck.tests(10000 * squareFoot));
    assertEquals(3, SlabCheck.tests(1));
    assertEquals(0, SlabCheck.tests(0));
  }

  @Test
  void nothingTold() {
    SlabMoisture moisture = check(Slab.unknown());
    assertEquals(
        new SlabMoisture(3, 0.4, MoistureVerdict.UNKNOWN, NONE, Optional.empty()), moisture);
    assertEquals(List.of("slab-moisture-unknown #/slab"), warnings());
  }

  @Test
  void upToTheLimitItGoes() {
    SlabMoisture moisture = check(slab(0.85, 0.85, false));
    assertEquals(MoistureVerdict.GO, moisture.verdict());
    assertEquals(Optional.empty(), moisture.barrier());
    assertEquals(List.of(), warnings());
  }

  @Test
  void overTheLimitItDoesNotGoAndABarrierComesFirst() {
    SlabMoisture moisture = check(slab(0.851, 0.85, false));
    assertEquals(MoistureVerdict.NO_GO, moisture.verdict());
    assertEquals(new MoistureBarrier(60, 24 * 3600, 1), moisture.barrier().get());
    assertEquals(List.of("slab-too-damp #/slab/humidity"), warnings());
    assertEquals("85.1", findings.warnings().get(0).values().get("humidity"));
    assertEquals("85", findings.warnings().get(0).values().get("limit"));
  }

  @Test
  void underABarrierItGoesWithAWord() {
    SlabMoisture moisture = check(slab(0.95, 0.85, true));
    assertEquals(MoistureVerdict.GO, moisture.verdict());
    assertEquals(60, moisture.barrier().get().area());
    assertEquals(List.of("slab-damp-under-barrier #/slab/humidity"), warnings());
  }

  /** 75 % for resilient coverings: a summary of ASTM F710. */
  @Test
  void withoutALimitTheUsualOneHolds() {
    assertEquals(MoistureVerdict.GO, check(slab(0.75)).verdict());
    SlabMoisture damp = check(slab(0.76));
    assertEquals(MoistureVerdict.NO_GO, damp.verdict());
    assertEquals(OptionalDouble.of(0.75), damp.limit());
    assertEquals(
        List.of(
            "slab-limit-assumed #/slab",
            "slab-limit-assumed #/slab",
            "slab-too-damp #/slab/humidity"),
        warnings());
  }

  /** ASTM F2170 section 10.2, from two checklists: 40 % of the slab, 20 % where both faces dry. */
  @Test
  void depthOfTheHoles() {
    assertEquals(0.4, check(slab(Optional.of(SlabGrade.BELOW), 100)).probeDepth());
    assertEquals(0.4, check(slab(Optional.of(SlabGrade.ON), 100)).probeDepth());
    assertEquals(0.2, check(slab(Optional.of(SlabGrade.ABOVE), 100)).probeDepth());
  }

  @Test
  void youngConcreteWaits() {
    check(slab(Optional.empty(), 28));
    assertEquals(List.of("slab-moisture-unknown #/slab"), warnings());
    check(slab(Optional.empty(), 27));
    assertEquals("slab-young #/slab/age", warnings().get(1));
  }

  @Test
  void aFloorOfWoodIsNotTestedSo() {
    SlabMoisture moisture = SlabCheck.of(slab(0.95, 0.85, false), 0, place(), findings);
    assertEquals(0, moisture.tests());
    assertEquals(MoistureVerdict.UNKNOWN, moisture.verdict());
    assertEquals(Optional.empty(), moisture.barrier());
    assertEquals(List.of(), warnings());
  }

  private SlabMoisture check(Slab slab) {
    return SlabCheck.of(slab, 60, place(), findings);
  }

  private static Place place() {
    return Place.root().at("slab");
  }

  private static Slab slab(double humidity, double limit, boolean barrier) {
    return new Slab(
        OptionalDouble.of(humidity),
        OptionalDouble.of(limit),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.of(barrier));
  }

  private static Slab slab(double humidity) {
    return new Slab(
        OptionalDouble.of(humidity), NONE, Optional.empty(), OptionalInt.empty(), Optional.empty());
  }

  private static Slab slab(Optional<SlabGrade> grade, int age) {
    return new Slab(NONE, NONE, grade, OptionalInt.of(age), Optional.empty());
  }

  private List<String> warnings() {
    return findings.warnings().stream().map(f -> f.code() + " " + f.place()).toList();
  }
}
