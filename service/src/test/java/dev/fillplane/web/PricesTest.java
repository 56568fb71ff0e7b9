package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Prices that are none, each told at its place. */
class PricesTest {

  private static Response priced(String prices) {
    ObjectNode request = RunningService.sample();
    request.withObject("target").set("prices", Refusals.tree(prices));
    return RunningService.post("/v1/plans", request);
  }

  private static void refused(String prices, String code, String pointer) {
    Response answer = priced(prices);
    assertEquals(422, answer.statusCode());
    assertEquals(List.of(code), answer.path("errors.code"));
    assertEquals(List.of(pointer), answer.path("errors.pointer"));
  }

  @Test
  void belowNothing() {
    refused("{'fill':'-1','grind':'4'}", "price-negative", "#/target/prices/fill");
    refused("{'fill':'1','grind':'-4.5'}", "price-negative", "#/target/prices/grind");
  }

  @Test
  void nothingAtAll() {
    refused("{'fill':'0','grind':'0.00'}", "prices-zero", "#/target/prices");
  }

  @Test
  void currencyThatIsNone() {
    refused(
        "{'currency':'EUX','fill':'1','grind':'4'}",
        "unknown-currency",
        "#/target/prices/currency");
    refused("{'currency':'euro','fill':'1','grind':'4'}", "bad-text", "#/target/prices/currency");
  }

  @Test
  void noDecimalString() {
    refused("{'fill':1.9,'grind':'4'}", "wrong-type", "#/target/prices/fill");
    refused("{'fill':'1,90','grind':'4'}", "bad-text", "#/target/prices/fill");
    refused("{'fill':'1.90'}", "missing", "#/target/prices/grind");
  }

  @Test
  void pricesAloneChangeNothing() {
    Response answer = priced("{'fill':'1.90','grind':'4'}");
    assertEquals(200, answer.statusCode());
    assertNull(answer.path("errors"));
  }
}
