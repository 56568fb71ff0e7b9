package dev.fillplane.client;

import dev.fillplane.client.generated.model.Plan;
import java.util.Optional;

/**
 * One answer of a stream: a plan, or the problem that takes its place.
 *
 * @param line number of its request in the stream, the first is 1
 * @param answer the plan
 * @param problem why there is no plan
 */
public record PlanLine(long line, Optional<Plan> answer, Optional<ProblemException> problem) {

  /**
   * The plan.
   *
   * @throws ProblemException if the service refused this line or failed at it
   */
  public Plan plan() {
    return answer.orElseThrow(problem::orElseThrow);
  }
}
