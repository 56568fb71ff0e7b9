package dev.fillplane.plan;

/**
 * A method behind a number.
 *
 * @param id stable name, as in the provenance of a plan
 * @param name what it finds
 * @param formula in plain signs
 * @param source where it comes from, and how sure that is
 * @param validity where it holds
 */
public record Method(String id, String name, String formula, String source, String validity) {

  /** Source of what everybody in the trade does and nobody has published. */
  static final String TRADE = "common practice, no source";
}
