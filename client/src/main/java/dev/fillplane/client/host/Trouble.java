package dev.fillplane.client.host;

import dev.fillplane.client.Problem;
import dev.fillplane.client.ProblemException;
import java.util.List;

/**
 * Why a unit could not be planned.
 *
 * @param kind the kind of problem, such as {@code invalid} or {@code unanswerable}
 * @param sentence what happened, for people
 * @param faults what is wrong, each with its place in what was asked: a plan request, for line
 *     items that under {@code #/plan} beside {@code #/prices}
 */
public record Trouble(String kind, String sentence, List<Problem> faults) {

  /** Copies the list. */
  public Trouble {
    faults = List.copyOf(faults);
  }

  static Trouble of(dev.fillplane.client.generated.model.Problem problem) {
    String type = problem.getType();
    List<Problem> faults =
        problem.getErrors().stream()
            .map(fault -> new Problem(fault.getCode(), fault.getPointer(), fault.getDetail()))
            .toList();
    return new Trouble(type.substring(type.lastIndexOf(':') + 1), problem.getDetail(), faults);
  }

  static Trouble of(ProblemException problem) {
    String sentence = problem.detail().orElse(problem.title());
    return new Trouble(problem.kind().orElse("unknown"), sentence, problem.errors());
  }
}
