package dev.fillplane.web;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Why a line of a stream has no plan: the problem that it would be alone, and its line. */
record LineProblem(
    int line,
    String type,
    String title,
    int status,
    String detail,
    Optional<String> requestId,
    Optional<String> traceId,
    List<Problem.Fault> errors,
    OptionalInt more) {

  static LineProblem of(int line, Problem problem) {
    return new LineProblem(
        line,
        problem.type(),
        problem.title(),
        problem.status(),
        problem.detail(),
        problem.requestId(),
        problem.traceId(),
        problem.errors(),
        problem.more());
  }
}
