package dev.fillplane.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ItemPriceTest {

  private static final ItemPrice BAGS =
      new ItemPrice(
          new BigDecimal("18.40"),
          "{bag}",
          OptionalDouble.of(6),
          List.of(
              new PriceBreak(20, new BigDecimal("17.20")),
              new PriceBreak(40.5, new BigDecimal("16.10"))));

  private static String at(String quantity) {
    return BAGS.at(new BigDecimal(quantity)).toPlainString();
  }

  @Test
  void aBreakHoldsFromItsQuantityOn() {
    assertEquals("18.40", at("19.99"));
    assertEquals("17.20", at("20"));
    assertEquals("17.20", at("40"));
    assertEquals("16.10", at("40.5"));
    assertEquals("16.10", at("4000"));
  }

  @Test
  void whatIsOrderedIsInPacks() {
    Measure needed = new Measure(new BigDecimal("19"), SaleUnit.BAG);
    assertEquals(24, BAGS.order(needed).value().intValueExact());
    assertEquals(needed, ItemPrice.perHour(BigDecimal.TEN).order(needed));
  }
}
