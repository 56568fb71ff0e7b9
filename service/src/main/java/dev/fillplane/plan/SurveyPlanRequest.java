package dev.fillplane.plan;

import dev.fillplane.material.MaterialWish;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Room;
import dev.fillplane.surface.SurfaceWish;
import dev.fillplane.survey.Survey;
import java.util.List;
import java.util.Optional;

/**
 * Rooms that are going to be surveyed.
 *
 * @param units the caller's units
 * @param reference the caller's name of the unit, handed back
 * @param rooms at least one
 * @param wanted when the survey is enough; one reading per 3 m2 unless told
 * @param material tells how many bags a volume is
 * @param surface how the floor varies, if that is known
 * @param readingError standard deviation of one reading; 1 mm
 * @param confidence with which the bags are to suffice; 0.9
 */
public record SurveyPlanRequest(
    UnitSystem units,
    Optional<String> reference,
    List<Room> rooms,
    Optional<SurveyWanted> wanted,
    MaterialWish material,
    SurfaceWish surface,
    @Measured(Dimension.HEIGHT) Double readingError,
    Double confidence) {

  /** Fills in what was left out. */
  public SurveyPlanRequest {
    rooms = List.copyOf(rooms);
    material = material == null ? MaterialWish.usual() : material;
    surface = surface == null ? SurfaceWish.usual() : surface;
    readingError = readingError == null ? Survey.DEFAULT_READING_ERROR : readingError;
    confidence = confidence == null ? 0.9 : confidence;
  }
}
