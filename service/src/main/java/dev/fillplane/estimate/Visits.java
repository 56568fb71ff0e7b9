package dev.fillplane.estimate;

import java.util.ArrayList;
import java.util.List;

/**
 * How often people come and what they are paid for: one visit for all that comes before the first
 * pour and the pour itself, or two where a moisture barrier hardens in between; one for each
 * further layer; one of one person to strip dams and rails. Of each visit half days are paid
 * (common practice, no source).
 */
final class Visits {

  private final PlannedWork job;
  private final List<Visit> all = new ArrayList<>();

  private Visits(PlannedWork job) {
    this.job = job;
  }

  static Visits of(PlannedWork job) {
    Visits visits = new Visits(job);
    visits.add();
    return visits;
  }

  private void add() {
    double first = job.blasting() + job.grinding() + job.filling() + job.barrier();
    boolean hardens = job.barrier() > 0;
    if (hardens || (job.pours() == 0 && first > 0)) {
      crew(first, false);
    }
    for (int layer = 0; layer < job.pours(); layer++) {
      double before = layer > 0 ? 0 : job.masking() + job.sealing() + (hardens ? 0 : first);
      double pour = job.attendance(layer) + job.washing() / job.pours();
      crew(before + job.priming(layer) + pour, true);
    }
    if (job.pours() > 0) {
      all.add(new Visit(1, job.rates().returnVisit(), false));
    }
  }

  private void crew(double work, boolean pours) {
    double comingBack = all.isEmpty() ? 0 : job.rates().returnVisit();
    all.add(new Visit(job.people(), job.rates().setUp() + comingBack + work, pours));
  }

  /** Visits at which the crew sets up. */
  int setUps() {
    return (int) all.stream().filter(visit -> visit.pours() || visit == all.get(0)).count();
  }

  /** Visits after the first. */
  int returns() {
    return Math.max(0, all.size() - 1);
  }

  /** Time that is paid for, summed over the people. */
  double paid() {
    double halfDay = job.rates().halfDay();
    return all.stream()
        .mapToDouble(visit -> visit.people() * visit.halfDays(halfDay) * halfDay)
        .sum();
  }

  /**
   * Days on which what is needed to pour is on site, at all visits at which is poured. Hire goes by
   * half days of the usual length, however people are paid.
   */
  double pourDays() {
    return all.stream()
        .filter(Visit::pours)
        .mapToDouble(visit -> visit.halfDays(WorkRates.USUAL_HALF_DAY) / 2)
        .sum();
  }

  /** Days of a machine that one person runs. */
  double days(double work) {
    return new Visit(1, work, false).halfDays(WorkRates.USUAL_HALF_DAY) / 2;
  }
}
