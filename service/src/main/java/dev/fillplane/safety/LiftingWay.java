package dev.fillplane.safety;

/** Another way to do the same lift. */
public enum LiftingWay {
  /** Bags of half the mass, twice as often. */
  SMALLER_BAG,
  /** Taken up at 75 cm. */
  STAND,
  /** Taken up at 75 cm, and turned with the feet. */
  STAND_AND_TURN,
  /** Two people at one bag. */
  TWO_PEOPLE
}
