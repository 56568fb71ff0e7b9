package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.openapi.Contract;
import dev.fillplane.web.json.Json;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

class WarmUpTest {

  private final Contract contract = Contract.load();
  private final PlanDesk desk = new PlanDesk();

  @Test
  void theSampleHasASheet() {
    byte[] sheet = desk.sheet(Json.canonical(contract.example("sample-metric.json")));
    assertEquals("%PDF-", new String(sheet, 0, 5, StandardCharsets.US_ASCII));
  }

  @Test
  void theFirstSheetIsPrintedBesideTheWork() throws InterruptedException {
    Thread printing = new WarmUp(contract, desk).sheet();
    AtomicReference<Throwable> failure = new AtomicReference<>();
    printing.setUncaughtExceptionHandler((thread, e) -> failure.set(e));
    assertTrue(printing.isDaemon(), "it must not keep a server alive");
    printing.join();
    assertFalse(printing.isAlive());
    assertEquals(null, failure.get());
  }
}
