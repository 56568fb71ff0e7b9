package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Prices and requests of estimates that are none, each told at its place. */
class LineItemFaultsTest {

  private static void refused(String parts, String code, String pointer) {
    refused(Estimated.request("rectangle.json", parts), code, pointer);
  }

  private static void refused(ObjectNode request, String code, String pointer) {
    Response answer = Estimated.post(request);
    assertEquals(422, answer.statusCode(), answer.asString());
    assertEquals(List.of(code), answer.path("errors.code"), answer.asString());
    assertEquals(List.of(pointer), answer.path("errors.pointer"));
  }

  /** The price book with one price of primer, told without its braces. */
  private static void primerRefused(String price, String code, String pointer) {
    refused(
        "{'prices':{'currency':'EUR','items':{'primer':{" + price + "}}}}",
        code,
        "#/prices/items/primer/" + pointer);
  }

  @Test
  void unknownCodes() {
    refused(
        "{'prices':{'currency':'EUR','items':{'primmer':{'price':'1','per':'L'}}}}",
        "unknown-item",
        "#/prices/items/primmer");
    refused("{'codes':{'primmer':'P 7'}}", "unknown-item", "#/codes/primmer");
    refused(
        "{'prices':{'currency':'EUR','items':{}},'hourlyRates':{'boss':'1'}}",
        "unknown-role",
        "#/hourlyRates/boss");
  }

  @Test
  void unknownCurrencies() {
    refused("{'prices':{'currency':'EUX','items':{}}}", "unknown-currency", "#/prices/currency");
    refused("{'prices':{'currency':'euro','items':{}}}", "bad-text", "#/prices/currency");
    refused("{'prices':{'items':{}}}", "missing", "#/prices/currency");
  }

  @Test
  void pricesBelowNothing() {
    primerRefused("'price':'-0.01','per':'L'", "price-negative", "price");
    primerRefused(
        "'price':'1','per':'L','breaks':[{'from':5,'price':'-1'}]",
        "price-negative",
        "breaks/0/price");
    String book = "{'prices':{'currency':'EUR','items':{}},";
    refused(book + "'hourlyRates':{'mix':'-1'}}", "price-negative", "#/hourlyRates/mix");
    refused(book + "'bid':'-1'}", "price-negative", "#/bid");
  }

  @Test
  void badDecimals() {
    primerRefused("'price':'1,90','per':'L'", "bad-text", "price");
    primerRefused("'price':'1e3','per':'L'", "bad-text", "price");
    primerRefused("'price':'','per':'L'", "bad-text", "price");
    primerRefused("'price':1.9,'per':'L'", "wrong-type", "price");
    primerRefused("'price':'1234567890','per':'L'", "bad-text", "price");
    primerRefused("'per':'L'", "missing", "price");
  }

  @Test
  void breaksOutOfOrder() {
    String breaks =
        "'price':'9','per':'L','breaks':[{'from':%s,'price':'8'},{'from':5,'price':'7'}]";
    primerRefused(breaks.formatted("6"), "breaks-out-of-order", "breaks/1/from");
    primerRefused(breaks.formatted("5"), "breaks-out-of-order", "breaks/1/from");
    primerRefused(breaks.formatted("0"), "too-small", "breaks/0/from");
  }

  @Test
  void packsOfNothing() {
    primerRefused("'price':'9','per':'L','minimumPack':0", "too-small", "minimumPack");
    primerRefused("'price':'9','per':'L','minimumPack':-5", "too-small", "minimumPack");
  }

  @Test
  void unknownUnits() {
    primerRefused("'price':'9','per':'litre'", "unit-does-not-fit", "per");
    primerRefused("'price':'9','per':'m2'", "unit-does-not-fit", "per");
    primerRefused("'price':'9'", "missing", "per");
  }

  @Test
  void mixedUnits() {
    primerRefused("'price':'9','per':'[gal_us]'", "units-mixed", "per");
    ObjectNode request = Estimated.request("rectangle.json", "{}");
    refused(request.put("units", "us"), "units-of-the-request", "#/plan/units");
    refused(
        "{'variations':[{'name':'a','patch':{'units':'us'}}]}",
        "units-of-the-base",
        "#/variations/0/patch/units");
  }

  @Test
  void moneyWithoutACurrency() {
    refused("{'hourlyRates':{'usual':'38'}}", "money-without-currency", "#/hourlyRates");
    refused("{'bid':'1000'}", "money-without-currency", "#/bid");
  }

  @Test
  void ratesOutOfRange() {
    refused("{'rates':{'prime':0}}", "out-of-range", "#/rates/prime");
    refused("{'rates':{'halfDay':0.5}}", "out-of-range", "#/rates/halfDay");
    refused("{'rates':{'seal':-1}}", "out-of-range", "#/rates/seal");
    refused("{'rates':{'polish':1}}", "unknown-property", "#/rates/polish");
  }

  @Test
  void faultsOfThePlanStandUnderIt() {
    refused("{'plan':{'rooms':null}}", "missing", "#/plan/rooms");
    refused(
        "{'plan':{'target':{'prices':{'fill':'-1','grind':'1'}}}}",
        "price-negative",
        "#/plan/target/prices/fill");
    refused("{'plan':{'crew':{'people':'many'}}}", "wrong-type", "#/plan/crew/people");
  }

  @Test
  void faultsOfVariationsStandAtTheirPatch() {
    refused(
        "{'variations':[{'name':'a','patch':{'tarket':1}}]}",
        "unknown-property",
        "#/variations/0/patch/tarket");
    refused(
        "{'variations':[{'name':'a','patch':{}},{'name':'a','patch':{}}]}",
        "variation-name-taken",
        "#/variations/1/name");
  }

  /** A name of a code may hold what a pointer must escape. */
  @Test
  void pointersAreEscaped() {
    refused("{'codes':{'a/b~c':'P 7'}}", "unknown-item", "#/codes/a~1b~0c");
  }

  /** All that is wrong comes at once. */
  @Test
  void severalFaultsAreToldTogether() {
    Response answer =
        Estimated.post(
            Estimated.request(
                "rectangle.json",
                "{'prices':{'currency':'EUX','items':{'x':{'price':'-1','per':'L'}}},'bid':'-1',"
                    + "'rates':{'seal':0}}"));
    assertEquals(
        List.of(
            "unknown-currency", "unknown-item", "price-negative", "out-of-range", "price-negative"),
        answer.path("errors.code"));
  }
}
