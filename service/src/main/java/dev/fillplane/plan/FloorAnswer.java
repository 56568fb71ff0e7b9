package dev.fillplane.plan;

import dev.fillplane.depth.ContourLevels;
import dev.fillplane.depth.Contours;
import dev.fillplane.depth.DepthField;
import dev.fillplane.depth.DepthSummary;
import dev.fillplane.depth.Probe;
import dev.fillplane.depth.Probes;
import dev.fillplane.depth.RoomDepth;
import dev.fillplane.depth.VolumeDraws;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.surface.SurfaceSummary;
import dev.fillplane.survey.Elevations;
import dev.fillplane.target.RoomsPlane;
import dev.fillplane.target.RoomsTarget;
import dev.fillplane.target.TargetSummary;
import java.util.ArrayList;
import java.util.List;

/** What an answer tells of a levelled floor. */
final class FloorAnswer {

  private final PlanRequest request;
  private final LevelledFloor floor;
  private final Findings findings;

  FloorAnswer(PlanRequest request, LevelledFloor floor, Findings findings) {
    this.request = request;
    this.floor = floor;
    this.findings = findings;
  }

  DepthFieldAnswer whole() {
    return new DepthFieldAnswer(
        request.reference(), elevations(), surface(), target(), depth(), findings.warnings());
  }

  Elevations elevations() {
    return Surveys.brief(floor.elevations());
  }

  SurfaceSummary surface() {
    return MoreReadings.told(
        request,
        floor.surface(),
        floor.readings().spots(),
        floor.sample(),
        floor.field(),
        floor.target().plane(),
        floor.sheet());
  }

  TargetSummary target() {
    return TargetSummary.of(
        floor.target().shape(),
        floor.target().groups().stream().map(this::plane).toList(),
        floor.draws().bareOdds(),
        floor.draws().guardHeight(request.confidence()));
  }

  private RoomsPlane plane(RoomsTarget group) {
    return new RoomsPlane(
        group.rooms().stream().map(room -> request.rooms().get(room).id()).toList(),
        group.plane().elevation(),
        group.plane().slopeX(),
        group.plane().slopeY(),
        group.boundBy());
  }

  DepthSummary depth() {
    DepthField field = floor.field();
    double[] levels = ContourLevels.choose(request.units(), field.maximum());
    return new DepthSummary(
        field.area(),
        field.pouredArea(),
        field.mean(),
        field.maximum(),
        field.minimum(),
        field.volume(),
        floor.draws().odds(),
        rooms(field, floor.draws()),
        field.grindVolume(),
        field.grindArea(),
        field.deepest(),
        field.highest(),
        probes(),
        field.grid(),
        new Contours(field.contours(levels)));
  }

  private List<RoomDepth> rooms(DepthField field, VolumeDraws draws) {
    List<RoomDepth> depths = new ArrayList<>();
    for (int i = 0; i < request.rooms().size(); i++) {
      double volume = field.rooms().get(i).volume();
      depths.add(new RoomDepth(request.rooms().get(i).id(), volume, draws.odds(i)));
    }
    return depths;
  }

  private List<Probe> probes() {
    return Probes.of(
        request.probes(),
        floor.surface(),
        floor.field(),
        request.rooms(),
        Place.root().at("probes"),
        findings);
  }
}
