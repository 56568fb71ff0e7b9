package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines at the caller's prices; the prices are invented. */
class LineItemPricesTest {

  /** The rectangle with the price of its 10 bags. */
  private static Estimated bags(String price) {
    return Estimated.of(
        "rectangle.json",
        "{'prices':{'currency':'EUR','items':{'underlayment':{'per':'{bag}'," + price + "}}}}");
  }

  private static double order(Estimated estimate) {
    return estimate.number("underlayment", "order");
  }

  @Test
  void anAmountIsTheOrderTimesItsPrice() {
    Estimated estimate = bags("'price':'18.405'");
    assertEquals(10, order(estimate));
    assertEquals("184.05", estimate.amount("underlayment"));
    assertEquals("18.405", estimate.line("underlayment").get("unitPrice").textValue());
    assertEquals("184.05", estimate.total());
    assertFalse(estimate.line("primer").has("amount"));
    assertFalse(estimate.line("primer").has("unitPrice"));
    List<String> unpriced =
        Trees.elements(estimate.answer().at("/totals/unpriced")).stream()
            .map(JsonNode::textValue)
            .toList();
    assertEquals(estimate.codes().subList(1, estimate.codes().size()), unpriced);
  }

  @Test
  void wholePacksAreBought() {
    Estimated estimate = bags("'price':'18.40','minimumPack':48");
    assertEquals(48, order(estimate));
    assertEquals("883.20", estimate.amount("underlayment"));
    assertEquals(9, estimate.quantity("underlayment"));
  }

  @Test
  void aBreakHoldsForTheWholeOrder() {
    String breaks = "'price':'18.40','breaks':[{'from':10,'price':'17'},{'from':11,'price':'1'}]";
    assertEquals("170.00", bags(breaks).amount("underlayment"));
    String packed = breaks + ",'minimumPack':6";
    assertEquals("12.00", bags(packed).amount("underlayment"));
  }

  /** 10 bags cost 184, 11 would cost 176. */
  @Test
  void aBreakThatWouldCostLessIsTold() {
    String near = "'price':'18.40','breaks':[{'from':11,'price':'16'}]";
    assertTrue(bags(near).warnings().contains("more-costs-less"));
    String far = "'price':'18.40','breaks':[{'from':20,'price':'16'}]";
    assertFalse(bags(far).warnings().contains("more-costs-less"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"line-items.json", "line-items-us.json"})
  void roundedLinesAddUpToTheTotal(String example) {
    Estimated estimate = Estimated.of(RunningService.example(example));
    BigDecimal sum = estimate.amounts().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    assertEquals(sum.toPlainString(), estimate.total());
    BigDecimal kinds = BigDecimal.ZERO;
    for (JsonNode kind : estimate.answer().at("/totals/kinds")) {
      kinds = kinds.add(new BigDecimal(kind.at("/amount/amount").textValue()));
    }
    assertEquals(sum, kinds);
    for (JsonNode line : estimate.lines()) {
      if (line.has("amount")) {
        BigDecimal exact =
            new BigDecimal(line.get("unitPrice").textValue())
                .multiply(line.at("/order/value").decimalValue());
        assertEquals(
            exact.setScale(2, RoundingMode.HALF_UP).toPlainString(),
            line.at("/amount/amount").textValue(),
            line.toString());
      }
    }
    assertTrue(estimate.amounts().size() > 15);
  }

  /** Yen have no minor units, dinars of Kuwait three decimals (ISO 4217). */
  @Test
  void amountsHaveTheDecimalsOfTheirCurrency() {
    String priced =
        "{'prices':{'currency':'%s','items':{'primer':{'price':'1.37','per':'L'}}},"
            + "'hourlyRates':{'usual':'1.2345'}}";
    assertEquals("2", Estimated.of("rectangle.json", priced.formatted("JPY")).amount("primer"));
    assertEquals("2.055", Estimated.of("rectangle.json", priced.formatted("KWD")).amount("primer"));
  }

  /** A line of its own price, then that of its role, then the usual hour. */
  @Test
  void hoursArePaidByRole() {
    Estimated estimate =
        Estimated.of(
            "rectangle.json",
            "{'prices':{'currency':'EUR','items':{'labour-priming':{'price':'90','per':'h'}}},"
                + "'hourlyRates':{'usual':'40','mix':'35.50'}}");
    assertEquals("90", estimate.line("labour-priming").get("unitPrice").textValue());
    assertEquals("35.50", estimate.line("labour-mixing").get("unitPrice").textValue());
    assertEquals("40", estimate.line("labour-sealing").get("unitPrice").textValue());
    assertEquals("mix", estimate.line("labour-mixing").get("role").textValue());
  }

  @Test
  void linesAreInTheUnitOfTheirPrice() {
    Estimated estimate =
        Estimated.of(
            "sample-us.json",
            "{'prices':{'currency':'USD','items':"
                + "{'primer':{'price':'42','per':'[gal_us]','minimumPack':5}}}}");
    assertEquals("[gal_us]", estimate.line("primer").at("/quantity/unit").textValue());
    assertEquals(5, estimate.number("primer", "order"));
    assertEquals("210.00", estimate.amount("primer"));
  }

  @Test
  void withoutPricesThereAreQuantitiesOnly() {
    Estimated estimate = Estimated.of("rectangle.json", "{}");
    assertEquals(List.of(), estimate.amounts());
    assertFalse(estimate.answer().get("totals").has("total"));
    assertEquals(0, estimate.answer().at("/totals/kinds").size());
    assertEquals(0, estimate.answer().at("/totals/unpriced").size());
  }

  /** Bags for 184, hours for 38 each; the bid leaves what it is over both. */
  @Test
  void aBidStandsBesideTheOwnCost() {
    Estimated estimate =
        Estimated.of(
            "rectangle.json",
            "{'prices':{'currency':'EUR','items':{'underlayment':{'price':'18.4','per':'{bag}'}}},"
                + "'hourlyRates':{'usual':'38'},'bid':'1200'}");
    JsonNode both = estimate.answer().get("ownOrBid");
    BigDecimal own = new BigDecimal(both.at("/own/amount").textValue());
    assertEquals(estimate.total(), own.toPlainString());
    assertEquals("184.00", both.at("/outlay/amount").textValue());
    assertEquals("1200.00", both.at("/bid/amount").textValue());
    assertEquals(
        new BigDecimal("1200.00").subtract(own).toPlainString(),
        both.at("/saved/amount").textValue());
    BigDecimal hours = estimate.answer().at("/totals/hours/value").decimalValue();
    assertEquals(
        new BigDecimal("1016").divide(hours, 2, RoundingMode.HALF_UP).toPlainString(),
        both.at("/perHour/amount").textValue());
    assertTrue(estimate.warnings().contains("bid-against-part"));
  }

  /** Whoever works for nothing pays the outlay only. */
  @Test
  void ownHoursMayCostNothing() {
    Estimated estimate =
        Estimated.of(
            "rectangle.json",
            "{'prices':{'currency':'EUR','items':{'underlayment':{'price':'18.4','per':'{bag}'}}},"
                + "'bid':'100'}");
    JsonNode both = estimate.answer().get("ownOrBid");
    assertEquals("184.00", both.at("/own/amount").textValue());
    assertEquals("184.00", both.at("/outlay/amount").textValue());
    assertEquals("-84.00", both.at("/saved/amount").textValue());
  }

  @Test
  void alternatesAreEstimatesByThemselves() {
    ObjectNode request = RunningService.example("line-items.json");
    Estimated all = Estimated.of(request);
    ObjectNode alone = request.deepCopy();
    alone.remove("variations");
    JsonNode patch = request.at("/variations/1/patch");
    alone.set("plan", MergePatch.merged(request.get("plan"), patch));
    Estimated plane = Estimated.of(alone);
    JsonNode alternate = all.answer().at("/alternates/1");
    assertEquals("to a plane", alternate.get("name").textValue());
    assertEquals(plane.total(), alternate.at("/total/amount").textValue());
    assertEquals(plane.number("underlayment", "order"), alternate.get("order").doubleValue());
    assertEquals(
        new BigDecimal(plane.total()).subtract(new BigDecimal(all.total())).toPlainString(),
        alternate.at("/more/amount").textValue());
    assertEquals(plane.answer().at("/totals/unpriced"), alternate.get("unpriced"));
    assertFalse(alternate.get("unpriced").isEmpty(), "the price book of the example has gaps");
  }

  @Test
  void anAlternateThatCannotBePlannedSaysWhy() {
    Estimated estimate =
        Estimated.of(
            "rectangle.json",
            "{'variations':[{'name':'low','patch':"
                + "{'target':{'ceiling':[{'x':1,'y':1,'elevation':-9,'of':'pour'}]}}}]}");
    JsonNode alternate = estimate.answer().at("/alternates/0");
    assertFalse(alternate.has("total"));
    assertEquals("#/target/ceiling/0", alternate.at("/errors/0/pointer").textValue());
  }
}
