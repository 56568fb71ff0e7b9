package dev.fillplane.plan;

import dev.fillplane.depth.GridWish;
import dev.fillplane.depth.ProbeWish;
import dev.fillplane.flatness.Covering;
import dev.fillplane.heat.Conditions;
import dev.fillplane.material.MaterialWish;
import dev.fillplane.pour.Crew;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Feature;
import dev.fillplane.room.Room;
import dev.fillplane.safety.Premises;
import dev.fillplane.screed.Equipment;
import dev.fillplane.surface.SurfaceWish;
import dev.fillplane.survey.Survey;
import dev.fillplane.target.TargetWish;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Everything about one unit.
 *
 * @param units the caller's units
 * @param reference the caller's name of the unit, handed back
 * @param rooms at least one
 * @param survey what was measured
 * @param conditions the weather, if told
 * @param covering what comes on top, if told
 * @param coveringThickness covering with its adhesive; wanted where a height is of the finish
 * @param confidence chance with which the bags ordered suffice; 0.9
 * @param seed of the realisations; 1
 * @param features what there is in the floor that the pour must heed
 * @param premises what of the place can hurt somebody; unknown
 */
public record PlanRequest(
    UnitSystem units,
    Optional<String> reference,
    List<Room> rooms,
    Survey survey,
    SurfaceWish surface,
    TargetWish target,
    MaterialWish material,
    Optional<Conditions> conditions,
    Crew crew,
    Equipment equipment,
    Optional<Covering> covering,
    @Measured(Dimension.HEIGHT) OptionalDouble coveringThickness,
    Double confidence,
    Long seed,
    GridWish grid,
    List<ProbeWish> probes,
    List<Feature> features,
    Premises premises) {

  /** Fills in what was left out. */
  public PlanRequest {
    rooms = List.copyOf(rooms);
    surface = surface == null ? SurfaceWish.usual() : surface;
    target = target == null ? TargetWish.usual() : target;
    material = material == null ? MaterialWish.usual() : material;
    crew = crew == null ? Crew.usual() : crew;
    equipment = equipment == null ? Equipment.usual() : equipment;
    confidence = confidence == null ? 0.9 : confidence;
    seed = seed == null ? 1L : seed;
    grid = grid == null ? new GridWish(OptionalDouble.empty()) : grid;
    probes = probes == null ? List.of() : List.copyOf(probes);
    features = features == null ? List.of() : List.copyOf(features);
    premises = premises == null ? Premises.unknown() : premises;
  }

  /** A survey of rooms with all else as usual. */
  public static PlanRequest of(
      UnitSystem units, List<Room> rooms, Survey survey, SurfaceWish surface) {
    return new PlanRequest(
        units,
        Optional.empty(),
        rooms,
        survey,
        surface,
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
        null,
        null,
        null);
  }
}
