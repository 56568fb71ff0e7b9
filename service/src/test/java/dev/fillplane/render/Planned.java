package dev.fillplane.render;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.Preparation;
import dev.fillplane.bay.RibbonRule;
import dev.fillplane.depth.ContourLevels;
import dev.fillplane.depth.Contours;
import dev.fillplane.depth.DepthField;
import dev.fillplane.depth.DepthSummary;
import dev.fillplane.depth.Grid;
import dev.fillplane.depth.Probe;
import dev.fillplane.depth.ProbeWish;
import dev.fillplane.depth.VolumeOdds;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.material.MaterialWish;
import dev.fillplane.plan.Computed;
import dev.fillplane.plan.Grinding;
import dev.fillplane.plan.Plan;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.pour.Crew;
import dev.fillplane.pour.Healing;
import dev.fillplane.pour.Pour;
import dev.fillplane.pour.PourPlanner;
import dev.fillplane.room.Room;
import dev.fillplane.screed.Pins;
import dev.fillplane.screed.Rails;
import dev.fillplane.supply.Bags;
import dev.fillplane.supply.Quantities;
import dev.fillplane.supply.Supplies;
import dev.fillplane.surface.Deviations;
import dev.fillplane.surface.Drift;
import dev.fillplane.surface.FloorSample;
import dev.fillplane.surface.Method;
import dev.fillplane.surface.NextReading;
import dev.fillplane.surface.Surface;
import dev.fillplane.surface.SurfaceSummary;
import dev.fillplane.survey.AdjustedPoint;
import dev.fillplane.survey.Elevations;
import dev.fillplane.survey.Suspect;
import dev.fillplane.target.Plane;
import dev.fillplane.target.RoomsPlane;
import dev.fillplane.target.TargetShape;
import dev.fillplane.target.TargetSummary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;

/** A plan over an invented floor that is known everywhere; parts that no map shows are left out. */
record Planned(PlanRequest request, Plan plan) {

  static Planned of(Wish wish) {
    Surface surface = surface(wish.floor());
    DepthField field =
        DepthField.of(FloorSample.of(wish.rooms(), surface, wish.cell()), wish.target());
    DataSheet sheet = Catalogue.resolve(MaterialWish.usual(), Place.root(), new Findings());
    List<ProbeWish> probes = List.of(probe(wish.rooms().get(0)));
    DepthSummary depth = depth(wish, field, probes);
    BayPlan bays = BayPlan.of(wish.rooms(), field, RibbonRule.byHand(sheet.yieldPerBag()));
    Quantities quantities =
        Supplies.of(wish.rooms(), field, depth, sheet)
            .quantities(
                new Bags(55, 50, 55, 60, 61, 6), List.of(), 5 * 3600, Place.root(), new Findings());
    Pour pour = PourPlanner.plan(bays, sheet, Crew.usual(), Healing.of(600), List.of());
    Plan plan =
        new Plan(
            Optional.of(wish.reference()),
            elevations(wish),
            surface(wish, field),
            target(wish.target()),
            depth,
            quantities,
            null,
            pour,
            List.of(),
            new Grinding(0, 0, 0, 0, Optional.empty(), List.of(), List.of()),
            Preparation.none(),
            Pins.of(bays),
            Rails.of(bays, 3),
            null,
            null,
            null,
            List.of(),
            List.of(),
            new Computed("", "", List.of()));
    return new Planned(request(wish, probes), plan);
  }

  private static PlanRequest request(Wish wish, List<ProbeWish> probes) {
    return new PlanRequest(
        wish.units(),
        Optional.of(wish.reference()),
        wish.rooms(),
        null,
        null,
        null,
        null,
        Optional.empty(),
        null,
        null,
        Optional.empty(),
        OptionalDouble.empty(),
        null,
        null,
        null,
        probes,
        null,
        null);
  }

  private static DepthSummary depth(Wish wish, DepthField field, List<ProbeWish> wishes) {
    List<Probe> probes =
        wishes.stream().map(p -> new Probe(p.id(), 0, 0.001, field.at(p.x(), p.y()))).toList();
    return new DepthSummary(
        field.area(),
        field.pouredArea(),
        field.mean(),
        field.maximum(),
        field.minimum(),
        field.volume(),
        new VolumeOdds(0, 0, 0),
        List.of(),
        field.grindVolume(),
        field.grindArea(),
        field.deepest(),
        field.highest(),
        probes,
        field.grid(),
        new Contours(field.contours(ContourLevels.choose(wish.units(), field.maximum()))));
  }

  private static ProbeWish probe(Room room) {
    var first = room.outline().rings().get(0).get(0);
    return new ProbeWish("by the window", first.x() + 0.7, first.y() + 0.55);
  }

  private static TargetSummary target(Plane plane) {
    TargetShape shape = plane.slope() == 0 ? TargetShape.LEVEL : TargetShape.PLANE;
    RoomsPlane all =
        new RoomsPlane(List.of(), plane.elevation(), plane.slopeX(), plane.slopeY(), List.of());
    return TargetSummary.of(shape, List.of(all), 0, 0);
  }

  /** Readings on a grid over each room; the fourth is suspect. */
  private static Elevations elevations(Wish wish) {
    List<AdjustedPoint> points = new ArrayList<>();
    for (Room room : wish.rooms()) {
      var box = room.outline().polygon().getEnvelopeInternal();
      for (double x = box.getMinX() + 0.3; x < box.getMaxX(); x += wish.spacing()) {
        for (double y = box.getMinY() + 0.3; y < box.getMaxY(); y += wish.spacing()) {
          double elevation = wish.floor().applyAsDouble(x, y);
          points.add(
              new AdjustedPoint(
                  "" + (points.size() + 1),
                  OptionalDouble.of(x),
                  OptionalDouble.of(y),
                  elevation,
                  0.001,
                  0));
        }
      }
    }
    Suspect suspect = new Suspect(points.get(Math.min(3, points.size() - 1)).point(), 4, 0.004, 0);
    return Elevations.of(points, List.of(suspect));
  }

  /** One more reading is wanted in the middle of each room; the floor is unsure in the east. */
  private static SurfaceSummary surface(Wish wish, DepthField field) {
    List<NextReading> next = new ArrayList<>();
    for (Room room : wish.rooms()) {
      var middle = room.outline().polygon().getInteriorPoint();
      next.add(new NextReading(middle.getX() + 0.2, middle.getY() + 0.1, 0.5));
    }
    Grid grid = field.grid();
    double[] deviations = grid.depths().clone();
    for (int i = 0; i < deviations.length; i++) {
      double share = (double) (i % grid.columns()) / grid.columns();
      deviations[i] = deviations[i] == Grid.OUTSIDE ? Deviations.OUTSIDE : 0.001 + 0.002 * share;
    }
    return new SurfaceSummary(Method.KRIGING, Drift.LINEAR, Optional.empty(), Optional.empty())
        .with(
            next.subList(0, Math.min(10, next.size())),
            new Deviations(
                grid.originX(),
                grid.originY(),
                grid.cell(),
                grid.columns(),
                grid.rows(),
                deviations));
  }

  private static Surface surface(DoubleBinaryOperator floor) {
    return new Surface() {
      @Override
      public double elevation(double x, double y) {
        return floor.applyAsDouble(x, y);
      }

      @Override
      public double deviation(double x, double y) {
        return 0.001;
      }
    };
  }
}
