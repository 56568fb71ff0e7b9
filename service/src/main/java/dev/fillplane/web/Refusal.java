package dev.fillplane.web;

import dev.fillplane.finding.FindingsException;
import dev.fillplane.quantity.UnitSystem;
import java.util.List;
import java.util.Map;

/** Ends a request with a problem. */
final class Refusal extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final transient Problem problem;
  private final transient Map<String, String> headers;

  Refusal(Problem problem, Map<String, String> headers) {
    super(problem.title(), null, false, false);
    this.problem = problem;
    this.headers = headers;
  }

  static Refusal of(Problem.Kind kind, String detail) {
    return new Refusal(Problem.of(kind, detail), Map.of());
  }

  static Refusal of(Problem.Kind kind, String detail, List<Problem.Fault> errors) {
    return new Refusal(Problem.of(kind, detail, errors), Map.of());
  }

  /** Ends a request that does not fit the contract. */
  static void ifAny(List<Problem.Fault> faults) {
    if (!faults.isEmpty()) {
      throw of(Problem.Kind.INVALID, "See errors for what and where.", faults);
    }
  }

  /** With every error of a request that makes no sense. */
  static Refusal of(FindingsException errors, UnitSystem units) {
    return of(
        Problem.Kind.UNANSWERABLE,
        "See errors for what and where.",
        errors.errors().stream().map(finding -> Problem.Fault.of(finding, units)).toList());
  }

  Problem problem() {
    return problem;
  }

  Map<String, String> headers() {
    return headers;
  }
}
