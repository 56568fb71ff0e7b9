package dev.fillplane.safety;

/** Whose limits hold on site. */
public enum Jurisdiction {
  US,
  EU,
  UK
}
