package dev.fillplane.pour;

/** What can go wrong in a pour. */
public enum Mishap {
  DRILL_DIES,
  PUMP_STOPS,
  POWER_OFF,
  LEAK,
  CLUMP,
  BAGS_SHORT,
  EDGE_LOST
}
