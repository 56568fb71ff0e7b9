package dev.fillplane.finding;

import java.util.ArrayList;
import java.util.List;

/**
 * Collects findings in the order in which they are met, so that a caller gets all of them at once.
 * Not thread safe: one per request.
 */
public final class Findings {

  private final List<Finding> all = new ArrayList<>();

  /** Notes something that prevents an answer. */
  public void error(String code, Place place, Object... namesAndValues) {
    all.add(Finding.of(code, true, place, namesAndValues));
  }

  /** Notes something odd that can be answered all the same. */
  public void warning(String code, Place place, Object... namesAndValues) {
    all.add(Finding.of(code, false, place, namesAndValues));
  }

  /** How many findings there are. */
  public int size() {
    return all.size();
  }

  /** Whether an answer is prevented. */
  public boolean hasErrors() {
    return all.stream().anyMatch(Finding::error);
  }

  /** What prevents an answer. */
  public List<Finding> errors() {
    return all.stream().filter(Finding::error).toList();
  }

  /** What is odd. */
  public List<Finding> warnings() {
    return all.stream().filter(finding -> !finding.error()).toList();
  }

  /**
   * Ends the work if anything prevents an answer.
   *
   * @throws FindingsException with all errors so far
   */
  public void throwIfErrors() {
    if (hasErrors()) {
      throw new FindingsException(errors());
    }
  }
}
