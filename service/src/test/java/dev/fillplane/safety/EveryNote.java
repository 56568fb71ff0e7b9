package dev.fillplane.safety;

import static dev.fillplane.safety.Jobs.job;

import dev.fillplane.heat.MoistureVerdict;
import dev.fillplane.room.BaseKind;
import dev.fillplane.room.FeatureKind;
import dev.fillplane.room.OldCovering;
import dev.fillplane.room.Substrate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Invented jobs that between them bring up every note. */
final class EveryNote {

  /** How many notes there are. */
  static final int CODES = 59;

  private EveryNote() {}

  static List<Note> all() {
    return Stream.of(structure(), place(), work())
        .flatMap(jobs -> jobs)
        .flatMap(job -> SafetyNotes.of(job.input()).stream())
        .toList();
  }

  private static Stream<Jobs> structure() {
    return Stream.of(
        wood().grind(1).air(5).rails(1).depths(.03, .03),
        wood().joistSpan(4).sag(0.1).allowance(40).tiled().spacing(1),
        wood().stone().structure(StructureKind.values()),
        job().suspended(true).stone().joistSpan(4),
        job().allowance(1).solvents().flames().heater(Heater.UNFLUED),
        job().heating(FloorHeating.OFF).base(BaseKind.WEAK, BaseKind.INSULATION));
  }

  private static Stream<Jobs> place() {
    return Stream.of(
        job().room("hall", Substrate.CONCRETE, 1970, OldCovering.RESILIENT),
        job().ventilated(Optional.of(false)).air(35),
        job().ventilated(Optional.empty()).roomOfUnknown("hall"),
        job().air(33).humidity(0.6).moisture(17, 0.6),
        job().slabMoisture(MoistureVerdict.NO_GO),
        job()
            .feature(FeatureKind.DRAIN)
            .feature(FeatureKind.CABLE)
            .feature(FeatureKind.MOVING_JOINT));
  }

  private static Stream<Jobs> work() {
    return Stream.of(
        job().gypsum().opening(Optional.empty(), 0.01),
        job().carry(20),
        job().grind(40),
        job().bags(0, 0).grind(8),
        job().pump());
  }

  private static Jobs wood() {
    return job().room("hall", Substrate.WOOD, 2015);
  }
}
