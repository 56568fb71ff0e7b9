package dev.fillplane.estimate;

import dev.fillplane.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * To do it yourself or have it done.
 *
 * @param own what all lines with a price cost
 * @param outlay the same without labour: what is paid even where the own hours count nothing
 * @param bid what somebody else asks
 * @param saved by doing it yourself; negative where the bid is less
 * @param perHour what an own hour would earn: bid less outlay, for each hour; left out where there
 *     are no hours
 */
public record OwnOrBid(Money own, Money outlay, Money bid, Money saved, Optional<Money> perHour) {

  private static final int HOUR_DECIMALS = 12;

  static OwnOrBid of(LineTotals totals, Money bid) {
    Money own = totals.total().orElseThrow();
    Money outlay = totals.outlay().orElseThrow();
    return new OwnOrBid(own, outlay, bid, bid.minus(own), perHour(bid.minus(outlay), totals));
  }

  private static Optional<Money> perHour(Money earned, LineTotals totals) {
    BigDecimal hours = totals.hours().value();
    return hours.signum() == 0
        ? Optional.empty()
        : Optional.of(
            new Money(
                earned.amount().divide(hours, HOUR_DECIMALS, RoundingMode.HALF_UP),
                earned.currency()));
  }
}
