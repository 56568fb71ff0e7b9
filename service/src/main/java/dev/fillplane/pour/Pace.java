package dev.fillplane.pour;

/**
 * The least time between two batches in the long run, in closed form: the slowest of mixing, hands,
 * barrels and tap, each as if the others never made it wait. A {@link CrewRun} is never faster, and
 * as fast where nothing holds it up.
 *
 * @param interval between two batches
 * @param slowest what sets it
 */
record Pace(double interval, Stage slowest) {

  static Pace of(TaskTimes times, Way way, int bags, double area, boolean pump) {
    double mixing = times.mixing(bags) / way.mixers();
    double water = times.waterPerBag() * bags;
    double trips = bags * times.trip();
    double spreading = area * (times.rake() + times.roll());
    double people = (times.mixing(bags) + water + trips + spreading) / way.people();
    Pace pace = new Pace(mixing, pump ? Stage.PUMP : Stage.MIXING).or(people, Stage.PEOPLE);
    if (pump) {
      return pace;
    }
    double barrel = (water + times.mixing(bags) + times.trip()) / way.barrels();
    return pace.or(barrel, Stage.BARRELS).or(water, Stage.WATER);
  }

  private Pace or(double other, Stage stage) {
    return other > interval ? new Pace(other, stage) : this;
  }
}
