package dev.fillplane.estimate;

/** Numbers of MasterFormat (CSI and CSC) under which the items are usually written; from memory. */
final class MasterFormat {

  /** Maintenance of cast-in-place concrete. */
  static final String CONCRETE_MAINTENANCE = "03 01 30";

  /** Gypsum cement underlayment. */
  static final String GYPSUM_UNDERLAYMENT = "03 54 13";

  /** Hydraulic cement underlayment. */
  static final String CEMENT_UNDERLAYMENT = "03 54 16";

  /** Common work results for flooring preparation. */
  static final String FLOORING_PREPARATION = "09 05 61";

  private MasterFormat() {}
}
