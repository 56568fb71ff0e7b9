package dev.fillplane.plan;

import dev.fillplane.supply.Quantities;

/**
 * Working time of a job, summed over the people, without waiting. Preparing, priming and sealing
 * take most of it, not pouring. The rates are common practice, no source, of low confidence.
 */
final class Labour {

  /** Floor that one person blasts or scours clean in a second: 30 m2 an hour. */
  private static final double CLEAN = 30.0 / 3600;

  /** Floor that one person gives one coat of primer in a second: 80 m2 an hour. */
  private static final double PRIME = 80.0 / 3600;

  /** Edge that one person seals in a second: 25 m an hour. */
  private static final double SEAL = 25.0 / 3600;

  /** Washing barrels and tools. */
  private static final double WASH_UP = 3600;

  private final PlanRequest request;
  private final Quantities quantities;
  private final double area;
  private final double secondsPerBag;

  /**
   * Of a job.
   *
   * @param quantities of its pour
   * @param area of its rooms
   * @param secondsPerBag time in which the whole crew pours a bag
   */
  Labour(PlanRequest request, Quantities quantities, double area, double secondsPerBag) {
    this.request = request;
    this.quantities = quantities;
    this.area = area;
    this.secondsPerBag = secondsPerBag;
  }

  /** Of grinding some floor. */
  double grinding(double groundArea) {
    return groundArea / request.target().grind().areaPerHour() * 3600;
  }

  /** Of filling some hollows: mixing and placing alone, and washing up. */
  double patching(int bags) {
    return bags > 0 ? bags * pouringABag() + WASH_UP : 0;
  }

  /** Of a pour over all rooms, with all that comes before and after it. */
  double pouring(int bags) {
    int coats = Math.max(1, quantities.primer().coats());
    return bags == 0
        ? 0
        : area / CLEAN
            + coats * area / PRIME
            + quantities.perimeterSeal() / SEAL
            + bags * pouringABag()
            + WASH_UP;
  }

  private double pouringABag() {
    return request.crew().people() * secondsPerBag;
  }
}
