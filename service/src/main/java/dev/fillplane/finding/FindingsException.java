package dev.fillplane.finding;

import java.util.List;

/** Ends the work on a request that cannot be answered; carries every error that is known. */
public final class FindingsException extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final transient List<Finding> errors;

  /** With at least one error. */
  public FindingsException(List<Finding> errors) {
    super(errors.size() + " findings, the first: " + errors.get(0).code());
    this.errors = List.copyOf(errors);
  }

  /** What prevents the answer. */
  public List<Finding> errors() {
    return errors;
  }
}
