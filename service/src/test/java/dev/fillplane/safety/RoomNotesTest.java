package dev.fillplane.safety;

import static dev.fillplane.safety.JobNotes.note;
import static dev.fillplane.safety.Jobs.job;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.fillplane.room.BaseKind;
import dev.fillplane.room.OldCovering;
import dev.fillplane.room.Substrate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rooms of one job that differ in base and old covering. */
class RoomNotesTest {

  private static Jobs twoRooms() {
    return job()
        .room("hall", Substrate.CONCRETE, 1990, OldCovering.CARPET)
        .room("bath", Substrate.WOOD, 1990, OldCovering.RESILIENT, BaseKind.WEAK);
  }

  @Test
  void aNoteNamesTheRoomsItIsAbout() {
    assertEquals(List.of("bath"), note(twoRooms(), "base-weak").rooms());
    assertEquals("bath", note(twoRooms(), "base-weak").values().get("rooms"));
    assertEquals(List.of("bath"), note(twoRooms(), "engineer-unknown-joists").rooms());
    assertEquals(List.of("hall", "bath"), note(twoRooms(), "asbestos-suspect").rooms());
    assertEquals(List.of(), note(twoRooms(), "wet-cement").rooms());
  }

  /** Resilient in one of the old rooms is enough. */
  @Test
  void theWorstOldCoveringCounts() {
    assertEquals(Severity.DANGER, note(twoRooms(), "asbestos-suspect").severity());
    Jobs carpets =
        job()
            .room("hall", Substrate.CONCRETE, 1990, OldCovering.CARPET)
            .room("bath", Substrate.WOOD, 2015, OldCovering.RESILIENT);
    assertEquals(Severity.WARNING, note(carpets, "asbestos-suspect").severity());
  }

  @Test
  void aRoomThatTellsItsOwnIsNotAsThePremises() {
    Jobs told = twoRooms().base(BaseKind.ASPHALT).oldCovering(OldCovering.WOOD);
    assertEquals(List.of("bath"), note(told, "base-weak").rooms());
    assertEquals(List.of("bath"), note(told.grind(1), "wood-dust").rooms());
    Jobs untold = job().room("hall", Substrate.CONCRETE, 2015).base(BaseKind.ASPHALT);
    assertEquals(List.of("hall"), note(untold, "base-weak").rooms());
  }

  @Test
  void depthsAreThoseOfTheRooms() {
    Note note =
        note(
            job()
                .depths(0.025, 0.03)
                .least(0.021)
                .room("bath", Substrate.SCREED, 2015, OldCovering.NONE, BaseKind.INSULATION),
            "base-on-insulation");
    assertEquals(0.021, note.value().orElseThrow().si(), 1e-12);
    assertEquals(0.020, note.limit().orElseThrow().si(), 1e-12);
    assertEquals(List.of("bath"), note.rooms());
  }
}
