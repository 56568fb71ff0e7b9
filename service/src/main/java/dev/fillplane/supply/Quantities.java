package dev.fillplane.supply;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.Optional;

/**
 * What must be on site. Water, primer and mass belong to the bags that are ordered.
 *
 * @param drivers what makes the bags unsure; empty where nothing is poured
 * @param mixWater water for the ordered bags
 * @param mass of the ordered bags
 * @param lifts layers of the pour, from the bottom; none where nothing is poured
 * @param thin where the pour is thinner than the sheet's least layer
 * @param aggregate what aggregate in the deep part would save; empty where the sheet allows none or
 *     nothing is deep enough
 * @param bow what the bow of wood joists takes, where their span is told
 * @param perimeterSeal length of wall and island to seal, without openings
 */
public record Quantities(
    Bags bags,
    List<Driver> drivers,
    @Measured(Dimension.LIQUID) double mixWater,
    Primer primer,
    @Measured(Dimension.MASS) double mass,
    List<Lift> lifts,
    ThinArea thin,
    Optional<AggregateOffer> aggregate,
    Optional<JoistBow> bow,
    List<RoomQuantity> rooms,
    @Measured(Dimension.PLAN) double perimeterSeal,
    List<Dam> dams) {

  /** Copies the lists. */
  public Quantities {
    drivers = List.copyOf(drivers);
    lifts = List.copyOf(lifts);
    rooms = List.copyOf(rooms);
    dams = List.copyOf(dams);
  }
}
