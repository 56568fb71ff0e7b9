package dev.fillplane.web;

import dev.fillplane.openapi.Contract;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Json;
import dev.fillplane.web.watch.Observer;

/** Plans without a server: the same answers as {@code POST /v1/plans}, byte for byte. */
public final class PlanDesk {

  private final Calculations calculations;
  private final Desk desk;

  /** Reads the contract; keep one. */
  public PlanDesk() {
    calculations = new Calculations();
    desk = new Desk(new SchemaGate(Contract.load(), calculations.schemas()), Observer.NONE);
  }

  PlanDesk(Calculations calculations, Desk desk) {
    this.calculations = calculations;
    this.desk = desk;
  }

  /**
   * A plan, or the problem that there is none.
   *
   * @param planned whether {@code json} is a plan
   */
  public record Reply(boolean planned, byte[] json) {}

  /** Answers one plan request. */
  public Reply plan(byte[] body) {
    try {
      return new Reply(true, answer(body));
    } catch (Refusal refusal) {
      return new Reply(false, Json.bytes(refusal.problem(), UnitSystem.METRIC));
    }
  }

  /**
   * The plan of a request.
   *
   * @throws Refusal if there is none
   */
  byte[] answer(byte[] body) {
    return desk.answer(calculations.plans(), Body.parse(body));
  }

  /**
   * The sheet of a request, as PDF.
   *
   * @throws Refusal if there is none
   */
  byte[] sheet(byte[] body) {
    return desk.answer(calculations.sheets(), Body.parse(body));
  }
}
