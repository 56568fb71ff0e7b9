package dev.fillplane.web;

import dev.fillplane.openapi.Contract;
import dev.fillplane.web.json.Json;

/** Plans the sample floor a few times, so that the first caller does not wait for the compiler. */
final class WarmUp implements Runnable {

  private static final int ROUNDS = 3;

  private final byte[] sample;
  private final PlanDesk desk;

  WarmUp(Contract contract, PlanDesk desk) {
    sample = Json.canonical(contract.example("sample-metric.json"));
    this.desk = desk;
  }

  @Override
  public void run() {
    for (int i = 0; i < ROUNDS; i++) {
      if (!desk.plan(sample).planned()) {
        throw new IllegalStateException("the sample floor cannot be planned");
      }
    }
  }

  /**
   * Prints the sheet of the sample floor, for the first one takes some 2 s: beside the work, when
   * callers are served already.
   */
  Thread sheet() {
    Thread printing = new Thread(() -> desk.sheet(sample), "first-sheet");
    printing.setDaemon(true);
    printing.setPriority(Thread.MIN_PRIORITY);
    printing.start();
    return printing;
  }
}
