package dev.fillplane.render;

import dev.fillplane.bay.KeptOpen;
import dev.fillplane.depth.GroundArea;
import dev.fillplane.plan.Plan;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.room.Opening;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import dev.fillplane.supply.Dam;
import java.util.ArrayList;
import java.util.List;

/**
 * Traces a plan for a drawing program: rooms with their openings, contours, what is ground and what
 * is kept open, bays, ribbons, joints, dams, rails with their stations, pins. In the plan's own
 * coordinates; nothing is simplified.
 */
public final class PlanTracer {

  private final PlanRequest request;
  private final Plan plan;
  private final List<PlanShape> shapes = new ArrayList<>();

  private PlanTracer(PlanRequest request, Plan plan) {
    this.request = request;
    this.plan = plan;
  }

  /**
   * Traces a plan.
   *
   * @param request as it was planned
   * @param plan its answer
   */
  public static PlanShapeCollection trace(PlanRequest request, Plan plan) {
    PlanTracer tracer = new PlanTracer(request, plan);
    tracer.rooms();
    tracer.contours();
    tracer.ground();
    tracer.keptOpen();
    tracer.shapes.addAll(PourTracer.trace(plan));
    tracer.dams();
    tracer.shapes.addAll(GuideTracer.trace(plan));
    return PlanShapeCollection.of(tracer.shapes);
  }

  private void rooms() {
    for (Room room : request.rooms()) {
      double area = room.outline().polygon().getArea();
      add(new ShapeMaker("room").id(room.id()).area(area), PlanShapeGeometry.area(room.outline()));
    }
    for (Room room : request.rooms()) {
      for (Opening opening : room.openings()) {
        add(
            new ShapeMaker("opening")
                .what(opening.kind())
                .id(opening.id())
                .room(room.id())
                .length(opening.width()),
            PlanShapeGeometry.line(opening.from(), opening.to()));
      }
    }
  }

  private void contours() {
    plan.depth()
        .contours()
        .contours()
        .forEach(
            contour ->
                add(
                    new ShapeMaker("contour").depth(contour.depth()),
                    PlanShapeGeometry.lines(contour.lines())));
  }

  private void ground() {
    List<GroundArea> areas = plan.grinding().areas();
    for (int i = 0; i < areas.size(); i++) {
      GroundArea area = areas.get(i);
      add(
          new ShapeMaker("ground")
              .number(i + 1)
              .height(area.height())
              .area(area.area())
              .volume(area.volume()),
          PlanShapeGeometry.area(area.outline()));
    }
  }

  private void keptOpen() {
    for (KeptOpen kept : plan.preparation().keepOpen()) {
      add(
          new ShapeMaker("keep-open").what(kept.kind()).room(kept.room()),
          kept.outline()
              .map(PlanShapeGeometry::area)
              .orElseGet(() -> PlanShapeGeometry.point(new Position(kept.x(), kept.y()))));
    }
  }

  private void dams() {
    for (Dam dam : plan.quantities().dams()) {
      Opening across = opening(dam);
      add(
          new ShapeMaker("dam")
              .id(dam.opening())
              .room(dam.room())
              .length(dam.length())
              .height(dam.height()),
          PlanShapeGeometry.line(across.from(), across.to()));
    }
  }

  private Opening opening(Dam dam) {
    return request.rooms().stream()
        .filter(room -> room.id().equals(dam.room()))
        .flatMap(room -> room.openings().stream())
        .filter(opening -> opening.id().equals(dam.opening()))
        .findFirst()
        .orElseThrow();
  }

  private void add(ShapeMaker shape, PlanShapeGeometry geometry) {
    shapes.add(shape.at(geometry));
  }
}
