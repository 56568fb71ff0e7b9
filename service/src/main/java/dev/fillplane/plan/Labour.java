package dev.fillplane.plan;

import dev.fillplane.supply.Quantities;

/**
 * Working time of a job, summed over the people, without waiting. Preparing, priming and sealing
 * take most of it, not pouring. The rates are common practice, no source, of low confidence.
 */
final class Labour {

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
    return groundArea / request.target().grind().areaPerHour() * UsualRates.HOUR;
  }

  /** Of filling some hollows: mixing and placing alone, and washing up. */
  double patching(int bags) {
    return bags > 0 ? bags * pouringABag() + UsualRates.WASH_UP : 0;
  }

  /** Of a pour over all rooms, with all that comes before and after it. */
  double pouring(int bags) {
    int coats = Math.max(1, quantities.primer().coats());
    return bags == 0
        ? 0
        : UsualRates.HOUR
                * (area / UsualRates.BLAST
                    + coats * area / UsualRates.PRIME
                    + quantities.perimeterSeal() / UsualRates.SEAL)
            + bags * pouringABag()
            + UsualRates.WASH_UP;
  }

  private double pouringABag() {
    return request.crew().people() * secondsPerBag;
  }
}
