package dev.fillplane.web;

import dev.fillplane.openapi.Contract;
import dev.fillplane.web.json.Json;

/** Plans the sample floor a few times, so that the first caller does not wait for the compiler. */
final class WarmUp implements Runnable {

  private static final int ROUNDS = 3;

  private final Contract contract;
  private final PlanDesk desk;

  WarmUp(Contract contract, PlanDesk desk) {
    this.contract = contract;
    this.desk = desk;
  }

  @Override
  public void run() {
    byte[] sample = Json.canonical(contract.example("sample-metric.json"));
    for (int i = 0; i < ROUNDS; i++) {
      if (!desk.plan(sample).planned()) {
        throw new IllegalStateException("the sample floor cannot be planned");
      }
    }
  }
}
