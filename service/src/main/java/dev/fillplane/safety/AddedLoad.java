package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Load;
import java.util.Optional;

/**
 * What the fresh underlayment weighs on the floor, at its wet density: in the mean of all that is
 * poured, and at the deepest place. Over what the caller says the floor may take, or on wood joists
 * over 20 kg/m2, the answer is to stop and ask a licensed engineer.
 */
final class AddedLoad implements Rule {

  private static final Amount DEAD_LOAD =
      Amount.of(Premises.USUAL_DEAD_LOAD, Dimension.SURFACE_LOAD);
  private static final Amount JOIST_CHECK = Load.ofMassPerArea(20);

  private static final String BASIS =
      "10 psf is a common design value for all dead load of a light floor (housing design texts)";

  private static final String WOOD_BASIS =
      "20 kg/m2 on wood joists: common practice, no source; 10 psf is a common design value for all"
          + " dead load of a light floor. A licensed engineer decides";

  private static final String TOLD_BASIS =
      "the dead load allowance of the request; a licensed engineer decides";

  @Override
  public Optional<Note> note(SafetyInput job) {
    PouredRooms all = job.all();
    if (!(all.load().si() > 0)) {
      return Optional.empty();
    }
    if (job.premises().deadLoadAllowance().isPresent()) {
      double told = job.premises().deadLoadAllowance().getAsDouble();
      return Optional.of(againstAllowance(all, Amount.of(told, Dimension.SURFACE_LOAD)));
    }
    PouredRooms wood = all.onWood();
    PouredRooms heavy = wood.over(JOIST_CHECK);
    return Optional.of(heavy.isEmpty() ? usual(all, !wood.isEmpty()) : onWood(heavy));
  }

  private static Note usual(PouredRooms all, boolean wood) {
    return Note.of("added-load", severity(all, wood), BASIS, "deepest", all.deepestLoad())
        .valued(all.load())
        .limited(DEAD_LOAD);
  }

  private static Note againstAllowance(PouredRooms all, Amount allowance) {
    boolean over = Load.isOver(all.deepestLoad(), allowance);
    return Note.of(
            over ? "added-load-over" : "added-load-within",
            over ? overSeverity(all, allowance) : Severity.NOTICE,
            TOLD_BASIS,
            "deepest",
            all.deepestLoad())
        .valued(all.load())
        .limited(allowance);
  }

  private static Severity overSeverity(PouredRooms all, Amount allowance) {
    return Load.isOver(all.load(), allowance) ? Severity.DANGER : Severity.WARNING;
  }

  private static Note onWood(PouredRooms wood) {
    Severity severity = Load.isOver(wood.load(), DEAD_LOAD) ? Severity.DANGER : Severity.WARNING;
    return Note.of("added-load-on-wood", severity, WOOD_BASIS, "deepest", wood.deepestLoad())
        .valued(wood.load())
        .limited(JOIST_CHECK)
        .in(wood);
  }

  private static Severity severity(PouredRooms all, boolean wood) {
    if (Load.isOver(all.load(), DEAD_LOAD)) {
      return Severity.WARNING;
    }
    return wood || Load.isOver(all.deepestLoad(), DEAD_LOAD) ? Severity.CAUTION : Severity.NOTICE;
  }
}
