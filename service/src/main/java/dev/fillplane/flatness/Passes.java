package dev.fillplane.flatness;

/** Whether a floor is flat enough, given how well it is known. */
public enum Passes {
  WITHIN,
  UNCLEAR,
  OVER
}
