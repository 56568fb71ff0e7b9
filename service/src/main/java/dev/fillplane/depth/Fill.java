package dev.fillplane.depth;

/**
 * What is poured in a part of the floor.
 *
 * @param area the part that is poured
 * @param volume what is poured there
 */
public record Fill(double area, double volume) {

  /** Mean depth of the poured part; 0 where nothing is. */
  public double meanDepth() {
    return area > 0 ? volume / area : 0;
  }
}
