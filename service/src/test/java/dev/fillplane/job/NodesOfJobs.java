package dev.fillplane.job;

import static dev.fillplane.job.JobNodes.accept;
import static dev.fillplane.job.JobNodes.ended;
import static dev.fillplane.job.JobNodes.everyUnitOnce;
import static dev.fillplane.job.JobNodes.status;
import static dev.fillplane.job.JobNodes.unit;
import static dev.fillplane.job.JobNodes.units;
import static dev.fillplane.job.JobNodes.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import dev.fillplane.trace.Trace;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import org.junit.jupiter.api.Test;

/** Nodes and clocks come and go; the job goes on and its end is told. */
interface NodesOfJobs {

  /** The store and the nodes on it. */
  JobNodes here();

  /** Back, so that what was planned for now lies ahead; and on, so that every node looks dead. */
  @Test
  default void aClockThatJumpsNeitherStopsNorDoublesAUnit() {
    TestClock clock = new TestClock();
    CountingPlanner planner = CountingPlanner.held();
    Jobs jobs = here().node(planner, clock, 2);
    String id = accept(jobs, units(12));
    planner.awaitBegun(2);
    clock.jump(Duration.ofHours(-5));
    planner.let(4);
    until(() -> status(jobs, id).done() == 4);
    clock.jump(Duration.ofDays(2));
    planner.let(100);
    JobStatus ended = ended(jobs, id);
    assertEquals(12, ended.done());
    everyUnitOnce(jobs, id, 12);
  }

  /** A node that stops gives its units back, and the next one goes on without being told. */
  @Test
  default void theNextNodeGoesOn() {
    CountingPlanner planner = CountingPlanner.held();
    Jobs first = here().node(planner);
    String id = accept(first, units(20));
    planner.let(5);
    until(() -> status(first, id).done() == 5);
    planner.let(2);
    first.close();
    CountingPlanner other = CountingPlanner.free();
    Jobs second = here().node(other);
    second.resume();
    assertEquals(20, ended(second, id).done());
    everyUnitOnce(second, id, 20);
  }

  @Test
  default void nothingIsOpenedUntilThereIsAJob() {
    assertEquals(here().store().shared(), here().store().mayHoldJobs());
    Jobs jobs = here().node(CountingPlanner.free());
    jobs.resume();
    assertEquals(Optional.empty(), jobs.status("me", "no such job"));
    assertEquals(here().store().shared(), here().store().mayHoldJobs());
    accept(jobs, units(1));
    assertTrue(here().store().mayHoldJobs());
  }

  /** The first time it answers that it failed; then it is told the same again, and never more. */
  @Test
  default void whoIsToldHearsOfTheEnd() throws Exception {
    BlockingQueue<String> heard = new LinkedBlockingQueue<>();
    BlockingQueue<String> traces = new LinkedBlockingQueue<>();
    Trace trace = Trace.begin();
    HttpServer receiver = HttpServer.create(new InetSocketAddress("127.0.0.1", 0), 0);
    receiver.createContext(
        "/",
        exchange -> {
          String body =
              new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
          boolean first = heard.isEmpty();
          heard.add(exchange.getRequestHeaders().getFirst("webhook-id") + " " + body);
          traces.add(exchange.getRequestHeaders().getFirst("traceparent").substring(0, 36));
          exchange.sendResponseHeaders(first ? 500 : 204, -1);
          exchange.close();
        });
    receiver.start();
    try {
      TestClock clock = new TestClock();
      Jobs jobs = here().node(CountingPlanner.free(), clock, 2);
      String url = "http://127.0.0.1:" + receiver.getAddress().getPort() + "/told";
      JobTerms terms = new JobTerms(null, null, Optional.of(new WebhookWish(url)));
      List<UnitRequest> units = List.of(unit("one"), unit("bad two"));
      JobOwner me = new JobOwner("me", Optional.of(trace));
      String id = jobs.accept(me, terms, units, Optional.empty(), status -> new byte[0]).id();
      until(() -> heard.size() == 1);
      clock.jump(Duration.ofSeconds(6));
      until(() -> heard.size() == 2);
      String told = heard.take();
      assertEquals(told, heard.take());
      assertEquals("00-" + trace.id() + "-", traces.take());
      assertTrue(told.startsWith("msg_" + id + " {\"type\":\"job.ended\""), told);
      assertTrue(told.contains("\"state\":\"finished\""), told);
    } finally {
      receiver.stop(0);
    }
  }
}
