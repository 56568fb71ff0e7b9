package dev.fillplane.safety;

/** Heating in the floor. */
public enum FloorHeating {
  NONE,
  OFF,
  ON
}
