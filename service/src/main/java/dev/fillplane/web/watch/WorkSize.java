package dev.fillplane.web.watch;

import dev.fillplane.plan.DepthFieldAnswer;
import dev.fillplane.plan.Plan;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.survey.Survey;
import dev.fillplane.survey.Table;

/**
 * How large a piece of work was.
 *
 * @param rooms rooms of a plan request
 * @param readings readings or measured elevations of its survey
 * @param cells cells of the grid that was answered; 0 where none was
 */
public record WorkSize(int rooms, long readings, long cells) {

  /** Of what is no plan request. */
  public static final WorkSize NONE = new WorkSize(0, 0, 0);

  /** The size of a request and its answer. */
  public static WorkSize of(Object request, Object answer) {
    return request instanceof PlanRequest plan
        ? new WorkSize(plan.rooms().size(), readings(plan.survey()), cells(answer))
        : NONE;
  }

  private static long readings(Survey survey) {
    int laser = survey.setups().stream().mapToInt(setup -> setup.readings().size()).sum();
    return laser + survey.elevations().size() + survey.table().map(WorkSize::rows).orElse(0L);
  }

  private static long rows(Table table) {
    return table.values().length / Math.max(1, table.columns().size());
  }

  private static long cells(Object answer) {
    if (answer instanceof Plan plan) {
      return plan.depth().grid().depths().length;
    }
    return answer instanceof DepthFieldAnswer field ? field.depth().grid().depths().length : 0;
  }
}
