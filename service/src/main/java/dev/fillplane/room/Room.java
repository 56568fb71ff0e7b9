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
 * @param base what the base is found to be, if it was looked at
 * @param oldCovering what lies or lay on the base, if known
 */
public record Room(
    String id,
    Outline outline,
    Optional<Substrate> substrate,
    Absorbency absorbency,
    OptionalInt built,
    List<Opening> openings,
    Optional<List<BaseKind>> base,
    Optional<OldCovering> oldCovering) {

  /** Fills in what was left out. */
  public Room {
    absorbency = absorbency == null ? Absorbency.NORMAL : absorbency;
    openings = openings == null ? List.of() : List.copyOf(openings);
    base = base.map(List::copyOf);
  }

  /** A room of whose base nothing more is told. */
  public Room(
      String id,
      Outline outline,
      Optional<Substrate> substrate,
      Absorbency absorbency,
      OptionalInt built,
      List<Opening> openings) {
    this(id, outline, substrate, absorbency, built, openings, Optional.empty(), Optional.empty());
  }

  /** The same room where what was not told of its base is as in the rest of the place. */
  public Room orAs(Optional<List<BaseKind>> otherBase, Optional<OldCovering> otherCovering) {
    return new Room(
        id,
        outline,
        substrate,
        absorbency,
        built,
        openings,
        base.or(() -> otherBase),
        oldCovering.or(() -> otherCovering));
  }

  /** Whether its substrate is told and is this one. */
  public boolean isOf(Substrate one) {
    return substrate.equals(Optional.of(one));
  }

  /** Whether its base was found to be of some kind. */
  public boolean hasBase(BaseKind kind) {
    return base.filter(kinds -> kinds.contains(kind)).isPresent();
  }
}
