package dev.fillplane.plan;

import dev.fillplane.depth.GroundArea;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.quantity.Money;
import dev.fillplane.quantity.UnitSystem;
import java.util.List;
import java.util.Optional;

/**
 * What the plan grinds, and what grinding would save.
 *
 * @param area of floor that the plan grinds; 0 where grinding is not allowed
 * @param volume of floor ground off
 * @param deepest height ground off at the highest place
 * @param minutes working time of one person
 * @param cost at the caller's price, if told
 * @param areas to grind, the highest first
 * @param savings what grinding before a pour to the target as wished, nothing ground, would save;
 *     the shallowest first; empty where it would save no bag
 */
public record Grinding(
    @Measured(Dimension.AREA) double area,
    @Measured(Dimension.FILL) double volume,
    @Measured(Dimension.HEIGHT) double deepest,
    @Measured(Dimension.TIME) double minutes,
    Optional<Money> cost,
    List<GroundArea> areas,
    List<Saving> savings) {

  /** Copies the lists. */
  public Grinding {
    areas = List.copyOf(areas);
    savings = List.copyOf(savings);
  }

  /** Of a floor as it is levelled. */
  static Grinding of(LevelledFloor floor, UnitSystem units, Costs costs, Labour labour) {
    List<GroundArea> areas = floor.groundAreas(floor.field());
    double area = areas.stream().mapToDouble(GroundArea::area).sum();
    double volume = areas.stream().mapToDouble(GroundArea::volume).sum();
    return new Grinding(
        area,
        volume,
        areas.isEmpty() ? 0 : areas.get(0).height(),
        labour.grinding(area),
        costs.of(0, volume),
        areas,
        new Savings(units, floor, costs, labour).all());
  }
}
