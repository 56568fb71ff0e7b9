package dev.fillplane.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.material.Aggregate;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Aggregate in bags of 25 kg that make 15 L, on floors 8 m long and 1 m wide. */
class AggregateOfferTest {

  private static final DataSheet SHEET = Sheets.withAggregate(0.003, Aggregate.usual());
  private static final double ROUNDING = 1e-9;

  /** 50 % of a 25 kg bag adds 4.7 L, 31 %: common practice, derived with grains of 2650 kg/m3. */
  @Test
  void halfABagOfAggregate() {
    AggregateOffer offer = offer(new Wedge(0.040, 0.040), SHEET).orElseThrow();
    assertEquals(0.5, offer.share());
    assertEquals(0.0047, offer.yieldGain() * 0.015, 5e-5);
    assertEquals(0.31, offer.yieldGain(), 0.005);
    assertEquals(12.5 / 2650 / 0.015, offer.yieldGain(), ROUNDING);
  }

  /**
   * 37 of 40 mm on 8 m2 are 296 L: 20.6 bags with waste and residue, 15.7 with aggregate. The whole
   * is 320 L and 7.2 L of placing and texture, 22.8 bags, and comes to 17.9.
   */
  @Test
  void aBox() {
    AggregateOffer offer = offer(new Wedge(0.040, 0.040), SHEET).orElseThrow();
    assertEquals(0.025, offer.minimumDepth());
    assertEquals(0.003, offer.neatCap());
    assertEquals(8, offer.area(), ROUNDING);
    assertEquals(0.296, offer.volume(), ROUNDING);
    assertEquals(16 * 12.5, offer.mass(), ROUNDING);
    assertEquals(5, offer.saved());
    assertEquals(30 - 5, offer.bags());
  }

  /** 4 mm deeper with every metre: over 25 mm on the last 1.75 m, 28.5 mm deep on average. */
  @Test
  void onlyTheDeepPartOfAWedge() {
    AggregateOffer offer = offer(new Wedge(0, 0.032), SHEET).orElseThrow();
    assertEquals(1.75, offer.area(), ROUNDING);
    assertEquals(1.75 * (0.0285 - 0.003), offer.volume(), ROUNDING);
  }

  @Test
  void theCapIsALayerThatTheSheetAllows() {
    DataSheet sheet = Sheets.withAggregate(0.005, Aggregate.usual());
    AggregateOffer offer = offer(new Wedge(0.040, 0.040), sheet).orElseThrow();
    assertEquals(0.005, offer.neatCap());
    assertEquals(8 * 0.035, offer.volume(), ROUNDING);
  }

  @Test
  void noOffer() {
    assertEquals(Optional.empty(), offer(new Wedge(0.040, 0.040), Catalogue.usual()));
    assertEquals(Optional.empty(), offer(new Wedge(0.010, 0.024), SHEET));
    assertEquals(Optional.empty(), offer(new Wedge(-0.02, -0.01), SHEET));
  }

  @Test
  void moreAggregateNeverSavesLess() {
    int before = 0;
    for (double share = 0; share <= 1; share += 0.05) {
      Aggregate aggregate = new Aggregate(0.0, share, null, null, null);
      DataSheet sheet = Sheets.withAggregate(0.003, aggregate);
      int saved = offer(new Wedge(0.010, 0.060), sheet).orElseThrow().saved();
      assertTrue(saved >= before, "at " + share);
      before = saved;
    }
    assertTrue(before > 0);
  }

  private static Optional<AggregateOffer> offer(Wedge wedge, DataSheet sheet) {
    return AggregateOffer.of(wedge, wedge.summary(), new Bags(30, 29, 30, 31, 32, 2), sheet);
  }
}
