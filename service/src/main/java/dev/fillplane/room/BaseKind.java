package dev.fillplane.room;

/** What a base is found to be, beside its substrate; each asks for more than a primer. */
public enum BaseKind {
  /** A floor of magnesium oxychloride; swells and corrodes under water. */
  MAGNESITE,
  /** A layer that floats on insulation. */
  INSULATION,
  /** Dusting, hollow, lightweight. */
  WEAK,
  ASPHALT,
  /** Gives underfoot. */
  BOUNCY
}
