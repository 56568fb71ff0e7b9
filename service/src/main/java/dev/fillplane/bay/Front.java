package dev.fillplane.bay;

/**
 * Where a strip touches one that is poured later.
 *
 * @param later order of that strip
 * @param from one end, across the travel
 * @param to the other end; larger
 */
public record Front(int later, double from, double to) {

  /** Its length. */
  public double length() {
    return to - from;
  }
}
