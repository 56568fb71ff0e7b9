package dev.fillplane.heat;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Go or no-go of a slab before it is primed, by its relative humidity (ASTM F2170). A leveller is
 * no moisture barrier, and a thin one cannot be tested itself.
 */
public final class SlabCheck {

  /** Highest humidity under resilient coverings, as a summary of ASTM F710 has it. */
  public static final double USUAL_LIMIT = 0.75;

  /** First tests of ASTM F2170 section 10.1, for the first 1000 ft2. */
  private static final int FIRST_TESTS = 3;

  private static final double TEST_AREA = 1000 * 0.3048 * 0.3048;

  /** Hole in a slab that dries to the top only, ASTM F2170 section 10.2; from two checklists. */
  private static final double ONE_FACE = 0.4;

  /** Hole in a slab that dries to both faces, same. */
  private static final double BOTH_FACES = 0.2;

  /** Younger concrete has not hardened as it should (common practice, no source). */
  private static final int YOUNG_DAYS = 28;

  /** Room for the last digits after a conversion of units. */
  private static final double ROUNDING = 1e-9;

  private final Slab slab;
  private final double area;
  private final Place place;
  private final Findings findings;

  private SlabCheck(Slab slab, double area, Place place, Findings findings) {
    this.slab = slab;
    this.area = area;
    this.place = place;
    this.findings = findings;
  }

  /**
   * Judges a slab.
   *
   * @param area of the floor that is no wood; 0 where all of it is
   * @param place of the slab in the request
   * @param findings receives warnings only
   */
  public static SlabMoisture of(Slab slab, double area, Place place, Findings findings) {
    return new SlabCheck(slab, area, place, findings).check();
  }

  private SlabMoisture check() {
    MoistureVerdict verdict = area > 0 ? verdict() : MoistureVerdict.UNKNOWN;
    boolean barrier = area > 0 && (verdict == MoistureVerdict.NO_GO || slab.hasBarrier());
    return new SlabMoisture(
        tests(area),
        slab.grade().equals(Optional.of(SlabGrade.ABOVE)) ? BOTH_FACES : ONE_FACE,
        verdict,
        slab.humidity().isPresent() ? OptionalDouble.of(limit()) : slab.limit(),
        barrier ? Optional.of(MoistureBarrier.on(area)) : Optional.empty());
  }

  private double limit() {
    return slab.limit().orElse(USUAL_LIMIT);
  }

  private MoistureVerdict verdict() {
    warnOfAge();
    if (slab.humidity().isEmpty()) {
      findings.warning("slab-moisture-unknown", place, "tests", tests(area));
      return MoistureVerdict.UNKNOWN;
    }
    if (slab.limit().isEmpty()) {
      findings.warning("slab-limit-assumed", place, "limit", percent(USUAL_LIMIT));
    }
    double humidity = slab.humidity().getAsDouble();
    if (humidity <= limit() + ROUNDING) {
      return MoistureVerdict.GO;
    }
    findings.warning(
        slab.hasBarrier() ? "slab-damp-under-barrier" : "slab-too-damp",
        place.at("humidity"),
        "humidity",
        percent(humidity),
        "limit",
        percent(limit()),
        "area",
        Amount.of(area, Dimension.AREA));
    return slab.hasBarrier() ? MoistureVerdict.GO : MoistureVerdict.NO_GO;
  }

  private void warnOfAge() {
    if (slab.age().isPresent() && slab.age().getAsInt() < YOUNG_DAYS) {
      findings.warning(
          "slab-young", place.at("age"), "age", slab.age().getAsInt(), "least", YOUNG_DAYS);
    }
  }

  /** 3 for the first 1000 ft2 and 1 for each further 1000 ft2 begun (ASTM F2170 section 10.1). */
  static int tests(double area) {
    if (!(area > 0)) {
      return 0;
    }
    double further = Math.max(0, area / TEST_AREA - 1);
    return FIRST_TESTS + (int) Math.ceil(further - ROUNDING);
  }

  private static String percent(double share) {
    BigDecimal tenths = BigDecimal.valueOf(Math.round(1000 * share), 1);
    return tenths.stripTrailingZeros().toPlainString();
  }
}
