package dev.fillplane.plan;

import java.util.List;

/**
 * Plans side by side.
 *
 * @param by what they are put in order by
 * @param rows the base first, then the best first
 */
public record Comparison(ComparedBy by, List<ComparisonRow> rows) {

  /** Copies the rows. */
  public Comparison {
    rows = List.copyOf(rows);
  }
}
