package dev.fillplane.room;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A room that is levelled.
 *
 * @param id its name, unique in the request
 * @param outline its edge
 * @param substrate what is poured on; unknown unless told
 * @param absorbency how thirsty the base is; normal unless told
 * @param built the year in which the floor was laid, if known
 * @param openings its gaps
 */
public record Room(
    String id,
    Outline outline,
    Optional<Substrate> substrate,
    Absorbency absorbency,
    OptionalInt built,
    List<Opening> openings) {

  /** Fills in what was left out. */
  public Room {
    absorbency = absorbency == null ? Absorbency.NORMAL : absorbency;
    openings = openings == null ? List.of() : List.copyOf(openings);
  }
}
