package dev.fillplane.pour;

/** What people do at a pour. */
public enum Role {
  /** Carry a bucket and pour it, or lead the hose. */
  CARRY_AND_POUR,
  /** Spread what was poured. */
  RAKE,
  /** Roll out air and close the surface before it heals no more. */
  SPIKE_ROLL,
  /** Open bags and mix, or feed the pump. */
  MIX,
  /** Rinse a barrel and measure its water. */
  MEASURE_WATER,
  /** Wash barrels and mixers at the end. */
  CLEAN
}
