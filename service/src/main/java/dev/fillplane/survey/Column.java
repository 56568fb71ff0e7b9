package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;

/** What a number in a table of readings is. */
public enum Column {
  X(Dimension.PLAN),
  Y(Dimension.PLAN),
  READING(Dimension.HEIGHT),
  ELEVATION(Dimension.HEIGHT);

  private final Dimension dimension;

  Column(Dimension dimension) {
    this.dimension = dimension;
  }

  /** What its numbers measure. */
  public Dimension dimension() {
    return dimension;
  }
}
