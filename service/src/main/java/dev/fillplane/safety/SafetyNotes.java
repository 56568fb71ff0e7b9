package dev.fillplane.safety;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What can hurt somebody on this job: each note has a value or a condition of the request behind
 * it, says what it is held against and where that comes from. Local code, the data sheet and, for
 * structure, a licensed engineer decide; no note says that something is safe.
 */
public final class SafetyNotes {

  private static final List<Rule> RULES =
      List.of(
          new SilicaAtMixing(),
          new GrindingDust(),
          new CleanUpDust(),
          new OldFlooring(),
          new FlooringOfUnknownAge(),
          new OldPaint(),
          new BagLifting(),
          new HeavyBatch(),
          new WetMix(),
          new EyeRinse(),
          new WashWater(),
          new AddedLoad(),
          new JoistBend(),
          new BagPallet(),
          new UnknownJoists(),
          new DeepOnWood(),
          new SaggingFloor(),
          new StoneOnJoists(),
          new TileOnJoists(),
          new JoistSpacing(),
          new StructureFound(
              StructureKind.CONCENTRATED_LOAD, "engineer-concentrated-load", Severity.WARNING),
          new StructureFound(
              StructureKind.DAMAGED_JOISTS, "engineer-damaged-joists", Severity.DANGER),
          new StructureFound(
              StructureKind.POST_TENSIONED, "engineer-post-tensioned", Severity.WARNING),
          new StructureFound(
              StructureKind.MOVING_CRACKS, "engineer-moving-cracks", Severity.WARNING),
          new FloatingBase(),
          new WeakBase(),
          new MovingJoints(),
          new HeatedFloor(),
          new HeaterFumes(),
          new SolventPrimer(),
          new OpenFlames(),
          new WoodDust(),
          new HeatStress(),
          new DampBase(),
          new DryingAir(),
          new WetSlab(),
          new PowerNearWater(),
          new HiddenCables(),
          new FloorOpenings(),
          new SlipperyFloor(),
          new RailTrip(),
          new EdgeTrip(),
          new Noise(),
          new HotMixer(),
          new HotWheel());

  private SafetyNotes() {}

  /** The notes of a job, the gravest first, then by code. */
  public static List<Note> of(SafetyInput job) {
    return RULES.stream()
        .map(rule -> rule.note(job))
        .flatMap(Optional::stream)
        .sorted(Comparator.comparing(Note::severity).thenComparing(Note::code))
        .toList();
  }
}
