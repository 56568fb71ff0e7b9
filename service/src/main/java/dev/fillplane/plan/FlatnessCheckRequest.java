package dev.fillplane.plan;

import dev.fillplane.flatness.Covering;
import dev.fillplane.flatness.FlatnessWish;
import dev.fillplane.flatness.MeasuredLine;
import dev.fillplane.material.MaterialWish;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Room;
import dev.fillplane.surface.SurfaceWish;
import dev.fillplane.survey.Survey;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A floor to check. Exactly one of lines and survey is told, rooms with the survey.
 *
 * @param units the caller's units
 * @param lines measured lines; none unless told
 * @param survey readings over rooms
 * @param rooms that the survey or the lines lie in; none unless told
 * @param surface how the floor between the readings is wanted
 * @param limit how flat the floor is wanted
 * @param straightedge length of the edge, where it is not that of the limit
 * @param area of the section that the lines lie in
 * @param suspended whether the lines lie on a suspended deck; no unless told
 * @param covering what comes on top, another way to tell the limit
 * @param poured whether the survey was taken after a pour; no unless told
 * @param material that hollows are patched with
 * @param bagsLeft bags of it that are left over
 */
public record FlatnessCheckRequest(
    UnitSystem units,
    List<MeasuredLine> lines,
    Optional<Survey> survey,
    List<Room> rooms,
    SurfaceWish surface,
    Optional<FlatnessWish> limit,
    @Measured(Dimension.PLAN) OptionalDouble straightedge,
    @Measured(Dimension.AREA) OptionalDouble area,
    Boolean suspended,
    Optional<Covering> covering,
    Boolean poured,
    Optional<MaterialWish> material,
    OptionalInt bagsLeft) {

  /** Fills in what was left out. */
  public FlatnessCheckRequest {
    lines = lines == null ? List.of() : List.copyOf(lines);
    rooms = rooms == null ? List.of() : List.copyOf(rooms);
    surface = surface == null ? SurfaceWish.usual() : surface;
    suspended = suspended != null && suspended;
    poured = poured != null && poured;
  }

  /** A plan request of the survey and the rooms, all else as usual. */
  PlanRequest asPlan() {
    return PlanRequest.of(units, rooms, survey.orElseThrow(), surface);
  }
}
