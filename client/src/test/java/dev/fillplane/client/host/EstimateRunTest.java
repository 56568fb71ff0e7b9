package dev.fillplane.client.host;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.fillplane.client.NoAnswerException;
import dev.fillplane.client.ProblemException;
import dev.fillplane.client.generated.model.Covering;
import dev.fillplane.client.host.StubEstimator.Answer;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Line items of every unit of a host, from a stub. */
@Timeout(30)
class EstimateRunTest {
  private static final Answer LINES =
      new Answer(
          200,
          """
          {"units": "metric", "verdict": "tight", "alternates": [],
           "warnings": [{"code": "assumed", "detail": "A material was assumed.", "pointer": "#"}],
           "lines": [{"code": "underlayment", "ownCode": "SLU", "reference": "03 54 16",
             "kind": "material", "description": "Underlayment", "basis": "#/quantities/bags/order",
             "quantity": {"value": 10, "unit": "{bag}"}, "order": {"value": 12, "unit": "{bag}"},
             "unitPrice": "18.40", "amount": {"amount": "220.80", "currency": "EUR"}}],
           "totals": {"hours": {"value": 0, "unit": "h"}, "kinds": [], "unpriced": ["primer"],
             "total": {"amount": "220.80", "currency": "EUR"}}}
          """);
  private static final Answer REFUSED =
      new Answer(
          422,
          """
          {"type": "urn:fillplane:problem:unanswerable", "title": "No sense", "status": 422,
           "detail": "One thing is wrong.",
           "errors": [{"code": "few-readings", "pointer": "#/plan/survey", "detail": "Too few."}]}
          """);

  @Test
  void everyUnitIsHandedOverInOrder() {
    TestHost host = new TestHost(20);
    RunSummary summary = run(host, body -> LINES);
    assertEquals(
        IntStream.range(0, 20).mapToObj(i -> "unit " + i + ": 1 lines").toList(), host.told);
    assertEquals(IntStream.rangeClosed(1, 20).boxed().toList(), host.shown);
    assertEquals(new RunSummary(20, 0, List.of(), Optional.empty(), false), summary);
    assertTrue(summary.complete());
  }

  /** The first answer waits until the second was asked for. */
  @Test
  void twoUnitsAreOnTheirWayAtOnceAndStillInOrder() {
    CountDownLatch second = new CountDownLatch(1);
    TestHost host = new TestHost(2);
    run(
        host,
        body -> {
          if (body.contains("unit 0")) {
            await(second);
          } else {
            second.countDown();
          }
          return LINES;
        });
    assertEquals(List.of("unit 0: 1 lines", "unit 1: 1 lines"), host.told);
  }

  @Test
  void aBadUnitIsItsOwnTrouble() {
    TestHost host = new TestHost(3);
    RunSummary summary = run(host, body -> body.contains("unit 1") ? REFUSED : LINES);
    assertEquals(List.of("unit 0: 1 lines", "unit 1: unanswerable", "unit 2: 1 lines"), host.told);
    assertEquals(2, summary.done());
    assertEquals(1, summary.refused());
    assertTrue(summary.complete());
  }

  @Test
  void aCallerWhoIsRefusedEndsTheRunAndNothingIsLost() {
    TestHost host = new TestHost(100);
    RunSummary summary =
        run(host, body -> body.contains("unit 2\"") ? new Answer(401, "{}") : LINES);
    assertInstanceOf(ProblemException.class, summary.endedBy().orElseThrow());
    assertFalse(summary.complete());
    assertEquals(List.of("unit 2"), summary.unanswered());
    assertEquals(host.taken, summary.done() + summary.unanswered().size());
    assertTrue(host.taken < 10, "no more were taken");
  }

  @Test
  void aServiceThatIsGoneEndsTheRun() {
    TestHost host = new TestHost(100);
    StubEstimator gone = new StubEstimator(body -> LINES);
    gone.close();
    RunSummary summary = new HostRun(gone.client()).estimate(host);
    assertInstanceOf(NoAnswerException.class, summary.endedBy().orElseThrow());
    assertEquals(host.taken, summary.unanswered().size());
  }

  @Test
  void aHostThatStopsGetsWhatIsOnItsWay() {
    TestHost host = new TestHost(100);
    host.stopAfter = 3;
    RunSummary summary = run(host, body -> LINES);
    assertTrue(summary.cancelled());
    assertFalse(summary.complete());
    assertEquals(host.taken, host.told.size());
    assertTrue(host.taken < 10, "taken " + host.taken);
  }

  @Test
  void aSourceThatFailsEndsTheRunAfterTheUnitsBefore() {
    TestHost host = new TestHost(10);
    host.failAt = 5;
    RunSummary summary = run(host, body -> LINES);
    assertEquals(5, host.told.size());
    assertEquals("no unit 5", summary.endedBy().orElseThrow().getMessage());
  }

  @Test
  void aSinkThatFailsReachesTheCaller() {
    TestHost host = new TestHost(10);
    host.sinkFailsAt = 2;
    var failure = assertThrows(IllegalStateException.class, () -> run(host, body -> LINES));
    assertEquals("the disk is full", failure.getMessage());
  }

  @Test
  void anEstimateIsReadInPlainWords() {
    try (StubEstimator service = new StubEstimator(body -> LINES)) {
      List<Estimate> estimates = new ArrayList<>();
      new HostRun(service.client()).estimate(collecting(new TestHost(1), estimates));
      Estimate estimate = estimates.get(0);
      LineItem line = estimate.lines().get(0);
      assertEquals("underlayment", line.code());
      assertEquals(Optional.of("SLU"), line.ownCode());
      assertEquals(new Quantity(12, "{bag}"), line.order());
      assertEquals(Optional.of(new BigDecimal("220.80")), line.amount());
      assertEquals(Optional.of(new BigDecimal("220.80")), estimate.total());
      assertEquals(Optional.of("EUR"), estimate.currency());
      assertEquals(List.of("primer"), estimate.unpriced());
      assertEquals(List.of("A material was assumed."), estimate.warnings());
      assertEquals("tight", estimate.verdict());
    }
  }

  @Test
  void whatTheHostTellsIsAsked() throws Exception {
    TestHost host = new TestHost(1);
    host.prices =
        Optional.of(
            new PriceList(
                    "EUR",
                    Map.of("primer", Price.of("7.90", "L").inPacksOf("5")),
                    Map.of("usual", new BigDecimal("38")))
                .withOwnCodes(Map.of("primer", "P-1")));
    try (StubEstimator service = new StubEstimator(body -> LINES)) {
      new HostRun(service.client()).estimate(host);
      String asked = service.asked().get(0);
      assertTrue(asked.startsWith("POST /v1/line-items {"), asked);
      JsonNode body = new ObjectMapper().readTree(asked.substring(asked.indexOf('{')));
      assertEquals("unit 0", body.at("/plan/reference").textValue());
      assertEquals(
          "[[[0.0,0.0],[4.0,0.0],[4.0,3.0],[0.0,3.0],[0.0,0.0]]]",
          body.at("/plan/rooms/0/outline/coordinates").toString());
      assertEquals("exit", body.at("/plan/rooms/0/openings/0/kind").textValue());
      assertEquals(2, body.at("/plan/survey/setups").size());
      assertEquals(1303, body.at("/plan/survey/setups/1/readings/0/reading").doubleValue());
      assertEquals("7.90", body.at("/prices/items/primer/price").textValue());
      assertEquals(5, body.at("/prices/items/primer/minimumPack").doubleValue());
      assertEquals("38", body.at("/hourlyRates/usual").textValue());
      assertEquals("P-1", body.at("/codes/primer").textValue());
    }
  }

  @Test
  void detailsOfAUnitAreSetOnItsRequest() {
    Unit unit =
        TestHost.unit(0)
            .with(request -> request.covering(Covering.WOOD_GLUED))
            .with(request -> request.coveringThickness(15.0));
    assertEquals(Covering.WOOD_GLUED, Requests.of(unit).getCovering());
    assertEquals(15.0, Requests.of(unit).getCoveringThickness());
    Opening doorway = Opening.doorway("d", new Corner(4, 1), new Corner(4, 2), "store");
    Unit joined =
        new Unit("u", Measures.US, List.of(Room.rectangle("hall", 4, 3, doorway)), List.of());
    var opening = Requests.of(joined).getRooms().get(0).getOpenings().get(0);
    assertEquals("doorway", opening.getKind().getValue());
    assertEquals("store", opening.getInto());
    assertEquals("us", Requests.of(joined).getUnits().getValue());
  }

  private static Host collecting(TestHost host, List<Estimate> estimates) {
    return new Host() {
      @Override
      public int builtFor() {
        return VERSION;
      }

      @Override
      public String name() {
        return "collecting";
      }

      @Override
      public UnitSource source() {
        return host.source();
      }

      @Override
      public EstimateSink sink() {
        return new EstimateSink() {
          @Override
          public void add(Unit unit, Estimate estimate) {
            estimates.add(estimate);
          }

          @Override
          public void refuse(Unit unit, Trouble trouble) {
            throw new AssertionError(trouble);
          }
        };
      }
    };
  }

  private static RunSummary run(TestHost host, Function<String, Answer> service) {
    try (StubEstimator estimator = new StubEstimator(service)) {
      return new HostRun(estimator.client()).estimate(host);
    }
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
