package dev.fillplane.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.finding.Findings;
import dev.fillplane.material.Binder;
import dev.fillplane.quantity.UnitSystem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Lines at random prices against plain whole numbers: hundredths of metres, thousandths of money.
 */
class PricerTest {

  /** A random need of strip and its random price. */
  private record Case(long need, long waste, long pack, long price, long from, long cheaper) {

    static Case of(Random random) {
      return new Case(
          random.nextInt(50_000),
          random.nextInt(5_000),
          1 + random.nextInt(3_000),
          random.nextInt(20_000),
          1 + random.nextInt(60_000),
          random.nextInt(20_000));
    }

    Need needed() {
      double metres = need / 100.0;
      double share = need == 0 ? 0 : (double) waste / need;
      return Need.wasting(Item.PERIMETER_STRIP, metres, share, "#/quantities/perimeterSeal");
    }

    ItemPrice told() {
      return new ItemPrice(
          BigDecimal.valueOf(price, 3),
          "m",
          OptionalDouble.of(pack / 100.0),
          List.of(new PriceBreak(from / 100.0, BigDecimal.valueOf(cheaper, 3))));
    }

    long order() {
      long all = need == 0 ? 0 : need + waste;
      return (all + pack - 1) / pack * pack;
    }

    long cents() {
      return (order() * (order() >= from ? cheaper : price) + 500) / 1000;
    }
  }

  private static LineItem line(Case one) {
    PriceBook book = new PriceBook("EUR", Map.of(Item.PERIMETER_STRIP.code(), one.told()));
    LineItemsRequest request =
        new LineItemsRequest(
            UnitSystem.METRIC,
            null,
            Optional.of(book),
            Map.of(),
            null,
            Map.of(),
            Optional.empty(),
            List.of());
    return new Pricer(request, Binder.CEMENT, new Findings()).line(one.needed());
  }

  @Test
  void randomLinesAreThoseOfWholeNumbers() {
    Random random = new Random(7);
    List<LineItem> lines = new ArrayList<>();
    long cents = 0;
    for (int i = 0; i < 500; i++) {
      Case one = Case.of(random);
      LineItem line = line(one);
      lines.add(line);
      assertEquals(0, BigDecimal.valueOf(one.order(), 2).compareTo(line.order().value()), "" + one);
      assertEquals(BigDecimal.valueOf(one.cents(), 2), line.amount().orElseThrow().amount());
      cents += one.cents();
    }
    LineTotals totals = LineTotals.of(lines, Optional.of("EUR"));
    assertEquals(BigDecimal.valueOf(cents, 2), totals.total().orElseThrow().amount());
  }
}
