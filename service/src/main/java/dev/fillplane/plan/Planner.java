package dev.fillplane.plan;

import dev.fillplane.bay.BayPlan;
import dev.fillplane.bay.Layers;
import dev.fillplane.bay.Preparations;
import dev.fillplane.depth.DepthSummary;
import dev.fillplane.depth.VolumeDraws;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.FindingsException;
import dev.fillplane.finding.Place;
import dev.fillplane.flatness.Covering;
import dev.fillplane.flatness.FlatnessCheck;
import dev.fillplane.flatness.FlatnessLimit;
import dev.fillplane.flatness.FlatnessSummary;
import dev.fillplane.heat.Conditions;
import dev.fillplane.heat.Drying;
import dev.fillplane.heat.DryingPlan;
import dev.fillplane.heat.Mix;
import dev.fillplane.heat.MixPlan;
import dev.fillplane.heat.Site;
import dev.fillplane.heat.Slab;
import dev.fillplane.heat.SlabCheck;
import dev.fillplane.heat.SlabMoisture;
import dev.fillplane.material.Catalogue;
import dev.fillplane.material.DataSheet;
import dev.fillplane.pour.Pour;
import dev.fillplane.pour.TroublePlanner;
import dev.fillplane.pour.TroubleSite;
import dev.fillplane.room.FeatureCheck;
import dev.fillplane.room.RoomCheck;
import dev.fillplane.room.Substrate;
import dev.fillplane.safety.Note;
import dev.fillplane.safety.PremisesCheck;
import dev.fillplane.safety.RoomPour;
import dev.fillplane.safety.SafetyInput;
import dev.fillplane.safety.SafetyNotes;
import dev.fillplane.screed.Pin;
import dev.fillplane.screed.Pins;
import dev.fillplane.screed.Rail;
import dev.fillplane.screed.Rails;
import dev.fillplane.supply.BagDrivers;
import dev.fillplane.supply.BagOdds;
import dev.fillplane.supply.Bags;
import dev.fillplane.supply.Driver;
import dev.fillplane.supply.JoistBow;
import dev.fillplane.supply.Lift;
import dev.fillplane.supply.Quantities;
import dev.fillplane.supply.Supplies;
import dev.fillplane.survey.Elevations;
import dev.fillplane.survey.SurveyAdjustment;
import dev.fillplane.target.PricesCheck;
import java.util.List;
import java.util.Optional;

/**
 * Composes the answer for one unit. Stateless; the same request gives the same answer to the bit.
 *
 * <p>What cannot be answered ends with a {@link FindingsException} that carries every error of its
 * stage; what is odd, and what this version keeps simple, stands under the warnings of the answer.
 */
public final class Planner {

  private static final Place ROOT = Place.root();

  private final PlanRequest request;
  private final Findings findings = new Findings();
  private final Site site;

  private Planner(PlanRequest request) {
    this.request = request;
    this.site = request.conditions().orElseGet(Conditions::unknown).site();
  }

  /** The whole plan. */
  public static Plan plan(PlanRequest request, Computed computed) {
    return new Planner(request).plan(computed);
  }

  /** The whole plan with what an order for several units needs to know. */
  public static PlannedUnit unit(PlanRequest request, Computed computed) {
    Planner planner = new Planner(request);
    LevelledFloor floor = planner.floor();
    return new PlannedUnit(
        planner.plan(floor, computed),
        floor.sheet(),
        floor.draws(),
        request.confidence(),
        request.seed());
  }

  /** The floor, the target and the depths. */
  public static DepthFieldAnswer depthField(PlanRequest request) {
    Planner planner = new Planner(request);
    return new FloorAnswer(request, planner.floor(), planner.findings).whole();
  }

  /** A survey alone. */
  public static ElevationsAnswer elevations(ElevationsRequest request) {
    Findings findings = new Findings();
    Elevations elevations = SurveyAdjustment.adjust(request.survey(), ROOT.at("survey"), findings);
    findings.throwIfErrors();
    return new ElevationsAnswer(Surveys.brief(elevations), findings.warnings());
  }

  /** What is wrong and odd about a request; found by planning it. */
  public static PlanValidation validate(PlanRequest request) {
    Planner planner = new Planner(request);
    try {
      Plan plan = planner.plan(new Computed("", "", List.of()));
      return new PlanValidation(true, List.of(), plan.warnings());
    } catch (FindingsException e) {
      return new PlanValidation(false, e.errors(), planner.findings.warnings());
    }
  }

  private LevelledFloor floor() {
    Terms.check(request, findings);
    request
        .target()
        .prices()
        .ifPresent(prices -> PricesCheck.check(prices, ROOT.at("target").at("prices"), findings));
    RoomCheck.check(request.rooms(), ROOT.at("rooms"), findings);
    FeatureCheck.check(request.features(), request.rooms(), ROOT.at("features"), findings);
    DataSheet sheet = Catalogue.resolve(request.material(), ROOT.at("material"), findings);
    PremisesCheck.check(request.premises(), request.rooms(), sheet, ROOT, findings);
    return new LevelledFloor(request, sheet, findings);
  }

  private Plan plan(Computed computed) {
    return plan(floor(), computed);
  }

  private Plan plan(LevelledFloor floor, Computed computed) {
    DataSheet sheet = floor.sheet();
    FloorAnswer told = new FloorAnswer(request, floor, findings);
    DepthSummary depth = told.depth();
    List<RoomPour> pours = pours(floor);
    PremisesCheck.checkDepths(pours, ROOT.at("rooms"), findings);
    Bags bags = bags(floor.draws(), sheet);
    Quantities quantities =
        Supplies.of(request.rooms(), floor.field(), depth, sheet)
            .bowing(bow(floor, bags))
            .quantities(
                bags, drivers(floor.draws()), DryingPlan.nextLift(sheet, site), ROOT, findings);
    DataSheet asPoured = sheet.yielding(BagOdds.planned(depth.volume(), depth.pouredArea(), sheet));
    BatchLimit.check(depth.volume(), batch(asPoured), ROOT.at("crew").at("bagsPerBatch"), findings);
    CrewCheck.check(request.crew(), sheet, ROOT.at("crew"), findings);
    findings.throwIfErrors();
    UnknownCautions.warn(request, site, ROOT, findings);
    BaseCautions.warn(request, sheet, findings);
    SlabMoisture slab = slab(floor);
    Mix mix =
        MixPlan.of(
            sheet,
            site,
            depth.mean(),
            request.crew().bagsPerBatch(),
            ROOT.at("conditions"),
            findings);
    BayPlan bays = bays(floor, quantities, asPoured);
    findings.throwIfErrors();
    Pour pour = pour(bays, floor, quantities, depth, asPoured, mix);
    List<Pin> pins = Pins.of(bays);
    List<Rail> rails = Rails.of(bays, request.equipment().screedLength());
    FlatnessSummary flatness = flatness(floor, !pins.isEmpty() || !rails.isEmpty());
    Drying drying = DryingPlan.of(sheet, site, mix.mixTemperature(), slab);
    Costs costs = new Costs(request.target().prices());
    Labour labour = labour(quantities, depth, pour);
    PourCautions.warn(depth, quantities, pour, flatness, ROOT, findings);
    findings.throwIfErrors();
    return new Plan(
        request.reference(),
        told.elevations(),
        told.surface(),
        told.target(),
        depth,
        quantities,
        mix,
        pour,
        Options.of(request, floor, flatness, costs, labour),
        Grinding.of(floor, request.units(), costs, labour),
        Preparations.of(request.rooms(), request.features()),
        pins,
        rails,
        flatness,
        drying,
        TroublePlanner.plan(bays, asPoured, pour, troubleSite(mix, quantities, drying)),
        safety(pours, depth, sheet, quantities, pour, rails, drying),
        findings.warnings(),
        computed);
  }

  /** Times of pouring are at the rate of the planned pour. */
  private Labour labour(Quantities quantities, DepthSummary depth, Pour pour) {
    int bags = quantities.bags().likely();
    return new Labour(request, quantities, depth.area(), bags > 0 ? pour.minutes() / bags : 0);
  }

  /** What one mix makes. */
  private double batch(DataSheet sheet) {
    return request.crew().bagsPerBatch() * sheet.yieldPerBag();
  }

  private Bags bags(VolumeDraws draws, DataSheet sheet) {
    return BagOdds.of(
        draws.volumes(), draws.wetAreas(), sheet, request.confidence(), request.seed());
  }

  private Optional<JoistBow> bow(LevelledFloor floor, Bags bags) {
    if (!(floor.bowShare() > 0)) {
      return Optional.empty();
    }
    int stiff = bags(floor.draws(), floor.stiffSheet()).order();
    double volume = floor.bowShare() * floor.field().volume();
    return Optional.of(new JoistBow(floor.bowShare(), volume, bags.order() - stiff));
  }

  private static List<Driver> drivers(VolumeDraws draws) {
    return BagDrivers.of(draws.volumes(), draws.wetAreas());
  }

  private BayPlan bays(LevelledFloor floor, Quantities quantities, DataSheet sheet) {
    BayPlan bays = cut(floor, quantities, sheet);
    bays.warn(request.rooms(), ROOT.at("rooms"), findings);
    return bays;
  }

  private BayPlan cut(LevelledFloor floor, Quantities quantities, DataSheet sheet) {
    List<Double> lifts = quantities.lifts().stream().map(Lift::maximumDepth).toList();
    return BayPlan.of(
        request.rooms(),
        request.features(),
        Layers.of(floor.field(), lifts),
        request.crew().ribbons(batch(sheet)));
  }

  private Pour pour(
      BayPlan bays,
      LevelledFloor floor,
      Quantities quantities,
      DepthSummary depth,
      DataSheet sheet,
      Mix mix) {
    PourJob job =
        new PourJob(
            site,
            request.crew(),
            depth.pouredArea(),
            depth.volume(),
            depth.mean(),
            depth.minimum(),
            depth.maximum(),
            other -> cut(floor, quantities, other));
    return job.pour(bays, sheet, mix);
  }

  private TroubleSite troubleSite(Mix mix, Quantities quantities, Drying drying) {
    return new TroubleSite(
        request.crew(), mix, quantities.bags().order(), quantities.dams().size(), drying.walkOn());
  }

  private FlatnessSummary flatness(LevelledFloor floor, boolean guided) {
    FlatnessLimit limit = request.covering().map(Covering::limit).orElseGet(FlatnessLimit::usual);
    FlatnessSummary flatness =
        FlatnessCheck.of(
            floor.polygons(), floor.sample()::elevation, floor.meanDeviation(), limit, guided);
    return floor.isThinlyRead() ? flatness.unseen() : flatness;
  }

  private SlabMoisture slab(LevelledFloor floor) {
    Slab slab = request.conditions().map(Conditions::slab).orElseGet(Slab::unknown);
    double area = 0;
    for (int i = 0; i < request.rooms().size(); i++) {
      boolean wood = request.rooms().get(i).isOf(Substrate.WOOD);
      area += wood ? 0 : floor.polygons().get(i).getArea();
    }
    return SlabCheck.of(slab, area, ROOT.at("conditions").at("slab"), findings);
  }

  private List<RoomPour> pours(LevelledFloor floor) {
    return RoomPour.of(
        request.premises().of(request.rooms()), floor.field().rooms(), floor.field().ranges());
  }

  private List<Note> safety(
      List<RoomPour> pours,
      DepthSummary depth,
      DataSheet sheet,
      Quantities quantities,
      Pour pour,
      List<Rail> rails,
      Drying drying) {
    return SafetyNotes.of(
        new SafetyInput(
            pours,
            depth.grindArea(),
            request.target().grind().areaPerHour(),
            sheet,
            site,
            quantities.bags().order(),
            pour.minutes(),
            request.crew(),
            quantities.bow(),
            quantities.dams(),
            rails.size(),
            request.covering().filter(Covering::isTile).isPresent(),
            request.premises(),
            request.features(),
            drying));
  }
}
