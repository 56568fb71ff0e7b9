package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.client.FillplaneClient;
import dev.fillplane.client.generated.api.PlansApi;
import dev.fillplane.client.generated.model.Plan;
import dev.fillplane.client.generated.model.PlanRequest;
import dev.fillplane.client.host.Corner;
import dev.fillplane.client.host.Estimate;
import dev.fillplane.client.host.EstimateSink;
import dev.fillplane.client.host.Host;
import dev.fillplane.client.host.HostRun;
import dev.fillplane.client.host.Measures;
import dev.fillplane.client.host.Opening;
import dev.fillplane.client.host.Reading;
import dev.fillplane.client.host.Room;
import dev.fillplane.client.host.RunSummary;
import dev.fillplane.client.host.Trouble;
import dev.fillplane.client.host.Unit;
import dev.fillplane.client.host.UnitSource;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Hosts against the running service: by stream and by job a unit has the plan it has alone. */
class HostRunsTest {
  private static final int UNITS = 10;
  private static final int BAD = 4;
  private static final FillplaneClient CLIENT = FillplaneClient.at(RunningService.uri()).build();
  private static final HostRun RUN = new HostRun(CLIENT);

  private final Map<String, PlanRequest> asked = new ConcurrentHashMap<>();
  private final Map<String, Plan> plans = new LinkedHashMap<>();
  private final Map<String, Estimate> estimates = new LinkedHashMap<>();
  private final List<String> refused = new ArrayList<>();

  @Test
  void plansOfAStreamAreThoseOfSingleCalls() {
    wholeRun(RUN.plan(new Units()));
    plansAreThoseOfSingleCalls();
  }

  @Test
  void plansOfAJobAreThoseOfSingleCalls() {
    wholeRun(RUN.job(new Units(), Duration.ofMinutes(5)));
    plansAreThoseOfSingleCalls();
  }

  @Test
  void linesAddUpToThePlan() {
    wholeRun(RUN.estimate(new Units()));
    estimates.forEach(
        (reference, estimate) -> {
          Plan plan = alone(reference);
          double bags =
              estimate.lines().stream()
                  .filter(line -> line.code().equals("underlayment"))
                  .mapToDouble(line -> line.order().value())
                  .sum();
          assertEquals(plan.getQuantities().getBags().getOrder().doubleValue(), bags, reference);
          assertEquals(plan.getPour().getVerdict(), estimate.verdict());
        });
  }

  private void wholeRun(RunSummary summary) {
    assertTrue(summary.complete(), summary.toString());
    assertEquals(UNITS - 1, summary.done());
    assertEquals(List.of("flat " + BAD + ": too-few-readings"), refused);
    List<String> others =
        IntStream.range(0, UNITS).filter(i -> i != BAD).mapToObj(i -> "flat " + i).toList();
    assertEquals(others, new ArrayList<>((plans.isEmpty() ? estimates : plans).keySet()));
  }

  private void plansAreThoseOfSingleCalls() {
    plans.forEach((reference, plan) -> assertEquals(alone(reference), plan, reference));
  }

  private Plan alone(String reference) {
    PlansApi api = CLIENT.api(PlansApi::new);
    return CLIENT.call(() -> api.makePlan(asked.get(reference)));
  }

  /** Invented flats; one has too few readings. */
  private static Unit unit(int number) {
    Random random = new Random(number);
    double width = 2.5 + 3 * random.nextDouble();
    double depth = 2.5 + 2 * random.nextDouble();
    Opening exit = Opening.exit("way out", new Corner(0.5, 0), new Corner(1.4, 0));
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < (number == BAD ? 2 : 9); i++) {
      double x = width * (0.1 + 0.4 * (i % 3));
      double y = depth * (0.1 + 0.4 * (i / 3));
      double down = 1200 + Math.round(8 * random.nextDouble());
      readings.add(new Reading("A", Integer.toString(i), x, y, down));
    }
    Room room = Room.rectangle("room", width, depth, exit);
    return new Unit("flat " + number, Measures.METRIC, List.of(room), readings);
  }

  private final class Units implements Host, EstimateSink {
    @Override
    public int builtFor() {
      return VERSION;
    }

    @Override
    public String name() {
      return "flats";
    }

    @Override
    public UnitSource source() {
      return () ->
          IntStream.range(0, UNITS)
              .mapToObj(HostRunsTest::unit)
              .map(unit -> unit.with(request -> asked.put(unit.reference(), request)))
              .iterator();
    }

    @Override
    public EstimateSink sink() {
      return this;
    }

    @Override
    public void add(Unit unit, Estimate estimate) {
      estimates.put(unit.reference(), estimate);
    }

    @Override
    public void add(Unit unit, Plan plan) {
      assertEquals(unit.reference(), plan.getReference());
      plans.put(unit.reference(), plan);
    }

    @Override
    public void refuse(Unit unit, Trouble trouble) {
      refused.add(unit.reference() + ": " + trouble.faults().get(0).code());
    }
  }
}
