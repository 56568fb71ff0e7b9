package dev.fillplane.survey;

import java.util.List;

/** One position of the laser and what was read from it. */
public record Setup(String id, List<Reading> readings) {

  /** Copies the readings. */
  public Setup {
    readings = List.copyOf(readings);
  }
}
