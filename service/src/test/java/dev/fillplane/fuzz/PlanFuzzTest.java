package dev.fillplane.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Plans of invented floors, told twice in ways between which a rule holds; each rule in turn. */
class PlanFuzzTest {

  /** A case takes two to four plans. */
  private static final FuzzRun RUN = new FuzzRun("plans", 4);

  /** At least this share of the floors is planned. */
  private static final double PLANNED = 0.6;

  private final FuzzedService service = FuzzedService.shared();
  private final Plans plans = new Plans(service);
  private int tried;
  private int planned;

  @Test
  void rulesBetweenPlansHold() {
    RUN.each(this::run);
    assertTrue(FuzzRun.isReplay() || planned >= PLANNED * tried, planned + " planned of " + tried);
  }

  private Optional<String> run(int number, Random random) {
    PlanRules rule = PlanRules.values()[number % PlanRules.values().length];
    ObjectNode request = service.requests().plainPlan(random);
    tried++;
    try {
      String broken = rule.broken(plans, request, random);
      planned++;
      return broken.isEmpty()
          ? Optional.empty()
          : Optional.of(rule + ": " + broken + "\n" + Texts.of(request));
    } catch (Plans.NoPlan e) {
      return Optional.empty();
    } catch (AssertionError e) {
      return Optional.of(rule + ": " + e.getMessage() + "\n" + Texts.of(request));
    }
  }
}
