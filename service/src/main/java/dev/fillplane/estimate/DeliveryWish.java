package dev.fillplane.estimate;

import java.util.OptionalInt;

/**
 * How the bags of an order come.
 *
 * @param unitsPerDay units that are poured on a day, in the order of the request; all on one day
 *     unless told
 * @param everyDays days of pouring that a delivery is for; 1
 * @param bagsPerPallet bags of a full pallet; as many as weigh a tonne unless told
 */
public record DeliveryWish(OptionalInt unitsPerDay, Integer everyDays, OptionalInt bagsPerPallet) {

  /** Most that a pallet carries unless told (common practice, no source). */
  public static final double PALLET_LOAD = 1000;

  /** Fills in what was left out. */
  public DeliveryWish {
    everyDays = everyDays == null ? 1 : everyDays;
  }

  /** One delivery. */
  public static DeliveryWish usual() {
    return new DeliveryWish(OptionalInt.empty(), null, OptionalInt.empty());
  }

  /** Units that one delivery is for. */
  int unitsPerDelivery() {
    long units = (long) unitsPerDay.orElse(Integer.MAX_VALUE) * everyDays;
    return (int) Math.min(Integer.MAX_VALUE, units);
  }

  /** Bags on a full pallet. */
  int pallet(double bagMass) {
    return bagsPerPallet.orElse(Math.max(1, (int) Math.floor(PALLET_LOAD / bagMass + 1e-9)));
  }
}
