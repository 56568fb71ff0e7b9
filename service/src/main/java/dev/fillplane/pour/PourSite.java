package dev.fillplane.pour;

/**
 * What is to be done next on site. Order of urgency: carry and pour what is mixed, rake it, roll
 * it, mix, measure water, and wash up once all is placed: what lies on the floor before what is
 * still in the bag. Each work takes the batches in their order, so they are placed in their order.
 * In a break no batch is begun and no water measured.
 */
final class PourSite {

  private final LaidFloor floor;
  private final TaskTimes times;
  private final Breaks breaks;
  private final boolean pump;
  private final MixingPlace mixing;
  private final PouringPlace pouring;
  private int toWash;
  private int unwashed;

  PourSite(LaidFloor floor, TaskTimes times, Way way, Crew crew) {
    this.floor = floor;
    this.times = times;
    breaks = new Breaks(crew.breaks());
    pump = crew.pumps();
    mixing = new MixingPlace(floor, times, way, crew);
    pouring = new PouringPlace(floor, way, crew);
    toWash = floor.batches() == 0 ? 0 : way.mixers() + (pump ? 0 : way.barrels());
    unwashed = toWash;
  }

  /** The most urgent work that can be begun; null if there is none. */
  Role mostUrgent(double now) {
    if (pouring.canCarry(mixing.mixed(), now)) {
      return Role.CARRY_AND_POUR;
    }
    if (pouring.canRake()) {
      return Role.RAKE;
    }
    if (pouring.canRoll()) {
      return Role.SPIKE_ROLL;
    }
    boolean stopped = breaks.stop(now);
    if (!stopped && mixing.canMix(now)) {
      return Role.MIX;
    }
    if (!stopped && mixing.canMeasure()) {
      return Role.MEASURE_WATER;
    }
    return pouring.allPlaced() && toWash > 0 ? Role.CLEAN : null;
  }

  /** Takes what a piece of work needs; the batch that it is for. */
  int begin(Role role, double now) {
    return switch (role) {
      case CARRY_AND_POUR -> pouring.takeBucket();
      case RAKE -> pouring.beginRaking();
      case SPIKE_ROLL -> pouring.beginRolling();
      case MIX -> mixing.beginMixing(now);
      case MEASURE_WATER -> mixing.beginMeasuring();
      case CLEAN -> --toWash;
    };
  }

  /** How long it takes; of a bucket the way to the floor and the pouring. */
  double duration(Role role, int batch) {
    return switch (role) {
      case CARRY_AND_POUR -> times.toFloor();
      case RAKE -> times.rake() * floor.area(batch);
      case SPIKE_ROLL -> times.roll() * floor.area(batch);
      case MIX -> times.mixing(floor.bags(batch));
      case MEASURE_WATER -> times.waterPerBag() * floor.bags(batch);
      case CLEAN -> times.wash();
    };
  }

  double wayBack() {
    return times.oneWay();
  }

  /** Age of the oldest that a batch is or meets, with its last bucket; 0 before. */
  double isPoured(int batch, double now) {
    return pouring.isPoured(batch, now) ? now - firstWater(floor.oldestMet(batch)) : 0;
  }

  /** Gives back what a piece of work needed. */
  void finish(Role role, int batch, double now) {
    switch (role) {
      case CARRY_AND_POUR -> {
        if (pouring.bucketIsBack(batch)) {
          mixing.barrelIsBack();
        }
      }
      case RAKE -> pouring.isRaked(batch);
      case SPIKE_ROLL -> pouring.isRolled(batch, now);
      case MIX -> mixing.isMixed();
      case MEASURE_WATER -> mixing.isMeasured();
      case CLEAN -> unwashed--;
    }
  }

  boolean allPlaced() {
    return pouring.allPlaced();
  }

  boolean done() {
    return pouring.allRolled() && unwashed == 0;
  }

  /** When work goes on that no person holds up; infinite if there is none. */
  double nextOpening(double now) {
    double next = later(breaks.workGoesOn(now), now);
    next = Math.min(next, later(mixing.opens(), now));
    return Math.min(next, later(pouring.opens(), now));
  }

  private static double later(double time, double now) {
    return time > now ? time : Double.POSITIVE_INFINITY;
  }

  /** What those wait for who have nothing to do. */
  Stage lacks(double now) {
    if (breaks.stop(now) || now < mixing.bayOpens()) {
      return Stage.BREAK;
    }
    return pump ? Stage.PUMP : mixing.lacks();
  }

  double firstWater(int batch) {
    return mixing.mixStart(batch) + times.charge();
  }

  double mixStart(int batch) {
    return mixing.mixStart(batch);
  }

  double ready(int batch) {
    return mixing.mixStart(batch) + times.mixing(floor.bags(batch));
  }

  double placed(int batch) {
    return pouring.placedAt(batch);
  }

  double rolled(int batch) {
    return pouring.rolledAt(batch);
  }
}
