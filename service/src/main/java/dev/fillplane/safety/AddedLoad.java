package dev.fillplane.safety;

import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
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
    Amount mean = job.load();
    Amount deepest = job.deepestLoad();
    if (!(mean.si() > 0)) {
      return Optional.empty();
    }
    return Optional.of(note(job, mean, deepest).valued(mean));
  }

  private static Note note(SafetyInput job, Amount mean, Amount deepest) {
    if (job.premises().deadLoadAllowance().isPresent()) {
      double told = job.premises().deadLoadAllowance().getAsDouble();
      return againstAllowance(mean, deepest, Amount.of(told, Dimension.SURFACE_LOAD));
    }
    return job.hasWood() && Load.isOver(mean, JOIST_CHECK)
        ? onWood(mean, deepest)
        : Note.of("added-load", severity(job, mean, deepest), BASIS, "deepest", deepest)
            .limited(DEAD_LOAD);
  }

  private static Note againstAllowance(Amount mean, Amount deepest, Amount allowance) {
    if (!Load.isOver(deepest, allowance)) {
      return Note.of("added-load-within", Severity.NOTICE, TOLD_BASIS, "deepest", deepest)
          .limited(allowance);
    }
    Severity severity = Load.isOver(mean, allowance) ? Severity.DANGER : Severity.WARNING;
    return Note.of("added-load-over", severity, TOLD_BASIS, "deepest", deepest).limited(allowance);
  }

  private static Note onWood(Amount mean, Amount deepest) {
    Severity severity = Load.isOver(mean, DEAD_LOAD) ? Severity.DANGER : Severity.WARNING;
    return Note.of("added-load-on-wood", severity, WOOD_BASIS, "deepest", deepest)
        .limited(JOIST_CHECK);
  }

  private static Severity severity(SafetyInput job, Amount mean, Amount deepest) {
    if (Load.isOver(mean, DEAD_LOAD)) {
      return Severity.WARNING;
    }
    return job.hasWood() || Load.isOver(deepest, DEAD_LOAD) ? Severity.CAUTION : Severity.NOTICE;
  }
}
