package dev.fillplane.pour;

import dev.fillplane.material.DataSheet;

/**
 * How long the pieces of the work take (common practice, no source): 60 s to open the bags of a
 * batch and set the mixer, 1 m/s with a bucket, 20 s to pour it, 10 s a square metre to rake and 10
 * s to spike-roll, 60 s to wash a barrel or a mixer.
 *
 * <p>A pump takes a bag in 25 s and leads it through the hose while the next is fed: 144 bags an
 * hour. Behind its hose 2.5 s a square metre do for raking and as much for rolling, so that three
 * people lay the published 7,000 ft2 an hour at 1/8 in.
 *
 * @param charge before water and powder meet
 * @param mix from then on under the mixer, whatever the batch
 * @param feed from then on for each bag
 * @param oneWay with a bucket to the floor, and back
 * @param pour a bucket, or a bag from the hose
 * @param waterPerBag to rinse a barrel and measure the water of a bag
 * @param rake a square metre
 * @param roll a square metre
 * @param wash a barrel or a mixer, at the end
 */
record TaskTimes(
    double charge,
    double mix,
    double feed,
    double oneWay,
    double pour,
    double waterPerBag,
    double rake,
    double roll,
    double wash) {

  private static final double CHARGE = 60;
  private static final double WALK = 1.0;
  private static final double POUR = 20;
  private static final double SPREAD = 10;
  private static final double PUMPED_BAG = 25;
  private static final double PUMPED_SPREAD = 2.5;
  private static final double WASH = 60;

  static TaskTimes of(Crew crew, DataSheet sheet) {
    if (crew.pumps()) {
      return new TaskTimes(0, 0, PUMPED_BAG, 0, PUMPED_BAG, 0, PUMPED_SPREAD, PUMPED_SPREAD, WASH);
    }
    double mix = Math.max(sheet.mixTime(), crew.mixTime().orElse(0));
    double walk = crew.carryDistance() / WALK;
    return new TaskTimes(CHARGE, mix, 0, walk, POUR, crew.waterTime(), SPREAD, SPREAD, WASH);
  }

  /** One turn of a mixer or of the pump, from opening the bags. */
  double mixing(int bags) {
    return charge + mix + bags * feed;
  }

  double toFloor() {
    return oneWay + pour;
  }

  /** There and back. */
  double trip() {
    return toFloor() + oneWay;
  }

  /** From first water until the first bucket is poured, without any waiting. */
  double soonest(int bags) {
    return mixing(bags) - charge + toFloor();
  }
}
