package dev.fillplane.safety;

/** How well hands hold the load, as NIOSH Pub. 94-110 describes it; a paper bag is poor. */
public enum Coupling {
  GOOD,
  FAIR,
  POOR
}
