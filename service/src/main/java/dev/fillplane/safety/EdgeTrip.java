package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.Room;
import dev.fillplane.supply.Dam;
import dev.fillplane.supply.Supplies;
import java.util.List;
import java.util.Optional;

/** Edges of the pour at openings beyond which nothing is levelled. */
final class EdgeTrip implements Rule {

  private static final double STEP = 0.25 * 0.0254;
  private static final double BEVEL = 0.5 * 0.0254;

  private static final String BASIS =
      "a step of 1/4 in at most, bevelled up to 1/2 in, a ramp beyond: common practice, no source;"
          + " local code decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    List<Dam> outer = job.dams().stream().filter(dam -> leadsOut(dam, job)).toList();
    double highest =
        outer.stream().mapToDouble(dam -> dam.height() - Supplies.DAM_FREEBOARD).max().orElse(0);
    if (!job.mixes() || highest <= STEP) {
      return Optional.empty();
    }
    PouredRooms rooms =
        job.all().that(room -> outer.stream().anyMatch(dam -> dam.room().equals(room.id())));
    return Optional.of(
        Note.of(
                "edge-trip",
                highest > BEVEL ? Severity.WARNING : Severity.CAUTION,
                BASIS,
                "bevel",
                Amount.of(BEVEL, Dimension.HEIGHT))
            .valued(Amount.of(highest, Dimension.HEIGHT))
            .limited(Amount.of(STEP, Dimension.HEIGHT))
            .in(rooms));
  }

  /** Whether the floor on the other side is not of this job. */
  private static boolean leadsOut(Dam dam, SafetyInput job) {
    return job.hasRoom(room -> room.id().equals(dam.room()) && leadsOut(dam.opening(), room));
  }

  private static boolean leadsOut(String opening, Room room) {
    return room.openings().stream()
        .anyMatch(one -> one.id().equals(opening) && one.into().isEmpty());
  }
}
