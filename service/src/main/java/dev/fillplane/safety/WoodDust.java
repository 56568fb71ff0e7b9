package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.OldCovering;
import dev.fillplane.room.Room;
import dev.fillplane.room.Substrate;
import java.util.Optional;

/** Fine dust of wood, which can explode; graver beside flames. Mineral powder does not burn. */
final class WoodDust implements Rule {

  private static final String BASIS =
      "common practice, no source; NFPA 652 and ATEX rules on dust that burns (from memory)";

  @Override
  public Optional<Note> note(SafetyInput job) {
    PouredRooms wood = job.all().that(WoodDust::isWood);
    if (!job.grinds() || wood.isEmpty()) {
      return Optional.empty();
    }
    Severity severity = job.premises().hasFlames() ? Severity.DANGER : Severity.WARNING;
    return Optional.of(
        Note.of("wood-dust", severity, BASIS)
            .valued(Amount.of(job.grindArea(), Dimension.AREA))
            .in(wood));
  }

  private static boolean isWood(Room room) {
    return room.isOf(Substrate.WOOD) || room.oldCovering().equals(Optional.of(OldCovering.WOOD));
  }
}
