package dev.fillplane.web;

import dev.fillplane.openapi.Contract;

/** Plans the sample floor a few times, so that the first caller does not wait for the compiler. */
final class WarmUp implements Runnable {

  private static final int ROUNDS = 3;

  private final Contract contract;

  WarmUp(Contract contract) {
    this.contract = contract;
  }

  @Override
  public void run() {
    byte[] sample = dev.fillplane.web.json.Json.canonical(contract.example("sample-metric.json"));
    PlanDesk desk = new PlanDesk();
    for (int i = 0; i < ROUNDS; i++) {
      if (!desk.plan(sample).planned()) {
        throw new IllegalStateException("the sample floor cannot be planned");
      }
    }
  }
}
