package dev.fillplane.plan;

import dev.fillplane.quantity.Money;
import dev.fillplane.target.Prices;
import java.util.Optional;

/**
 * Costs at the caller's prices: volumes of fill and of floor ground off times their prices. Nothing
 * where no prices are told. Labour is in them as far as it is in the prices.
 */
final class Costs {

  private final Optional<Prices> prices;

  Costs(Optional<Prices> prices) {
    this.prices = prices;
  }

  /** Of a volume of underlayment and a volume of floor ground off. */
  Optional<Money> of(double fill, double ground) {
    return prices.map(p -> Money.of(p.fill() * fill + p.grind() * ground, p.currency()));
  }

  /** What less fill saves over what grinding costs; negative where grinding is dearer. */
  Optional<Money> saved(double lessFill, double ground) {
    return of(lessFill, -ground);
  }
}
