package dev.fillplane.surface;

/** How the floor between the readings is found. */
public enum Method {
  KRIGING
}
