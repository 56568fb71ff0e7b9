package dev.fillplane.safety;

/** What warms the place while people work and the floor dries. */
public enum Heater {
  NONE,
  ELECTRIC,
  /** Burns fuel and leads its fumes outdoors. */
  FLUED,
  /** Burns fuel and leaves its fumes in the room. */
  UNFLUED
}
