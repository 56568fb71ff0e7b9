package dev.fillplane.plan;

import dev.fillplane.depth.DepthField;
import dev.fillplane.depth.GroundArea;
import dev.fillplane.depth.Levels;
import dev.fillplane.finding.Stopped;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.supply.BagOdds;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How many bags the humps of a floor cost: the target as wished is brought down in a few steps, and
 * what then stands too high is ground. The likely bags before and after are compared unrounded and
 * their difference is rounded down.
 *
 * <p>Steps that save no whole bag are left out, and so are those for which more than a quarter of
 * the floor would have to be ground: that is no hump any more.
 */
final class Savings {

  private static final double[] METRIC = {0.001, 0.002, 0.003, 0.005};

  /** Sixteenths of an inch: 1, 2, 3, 4. */
  private static final double[] US = {0.0254 / 16, 0.0254 / 8, 3 * 0.0254 / 16, 0.0254 / 4};

  /** More of the floor than this is no hump. */
  private static final double MOST_OF_FLOOR = 0.25;

  private final UnitSystem units;
  private final LevelledFloor floor;
  private final Costs costs;
  private final Labour labour;

  Savings(UnitSystem units, LevelledFloor floor, Costs costs, Labour labour) {
    this.units = units;
    this.floor = floor;
    this.costs = costs;
    this.labour = labour;
  }

  /** The steps that are worth telling, the shallowest first. */
  List<Saving> all() {
    Optional<Levels> levels = floor.unground();
    return levels.isEmpty() ? List.of() : all(levels.get());
  }

  private List<Saving> all(Levels levels) {
    DepthField before = floor.under(levels);
    List<Saving> savings = new ArrayList<>();
    for (double height : units == UnitSystem.METRIC ? METRIC : US) {
      Stopped.ifInterrupted();
      DepthField after = floor.loweredBy(height, levels);
      int bags = (int) Math.floor(bags(before) - bags(after));
      if (bags > 0 && after.grindArea() <= MOST_OF_FLOOR * before.area()) {
        savings.add(saving(height, bags, before, after));
      }
    }
    return savings;
  }

  private Saving saving(double height, int bags, DepthField before, DepthField after) {
    List<GroundArea> areas = floor.groundAreas(after);
    double area = areas.stream().mapToDouble(GroundArea::area).sum();
    double volume = areas.stream().mapToDouble(GroundArea::volume).sum();
    return new Saving(
        height,
        bags,
        area,
        volume,
        labour.grinding(area),
        costs.saved(before.volume() - after.volume(), volume),
        areas);
  }

  private double bags(DepthField field) {
    return BagOdds.expected(field.volume(), field.pouredArea(), floor.sheet());
  }
}
