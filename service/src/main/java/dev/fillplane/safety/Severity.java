package dev.fillplane.safety;

/** Signal words as ANSI Z535 uses them, the gravest first. */
public enum Severity {
  DANGER,
  WARNING,
  CAUTION,
  NOTICE
}
