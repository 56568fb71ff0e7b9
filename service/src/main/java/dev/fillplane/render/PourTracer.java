package dev.fillplane.render;

import dev.fillplane.bay.Joint;
import dev.fillplane.plan.Plan;
import dev.fillplane.pour.PouredBay;
import dev.fillplane.pour.Ribbon;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;

/** Traces what is poured: bays, their ribbons in the order of the pour, joints. */
final class PourTracer {

  private final List<PlanShape> shapes = new ArrayList<>();

  private PourTracer() {}

  static List<PlanShape> trace(Plan plan) {
    PourTracer tracer = new PourTracer();
    List<PouredBay> bays =
        plan.pour().bays().stream().filter(bay -> !bay.ribbons().isEmpty()).toList();
    bays.forEach(tracer::bay);
    bays.forEach(bay -> bay.ribbons().forEach(ribbon -> tracer.ribbon(bay, ribbon)));
    plan.pour().joints().forEach(tracer::joint);
    return tracer.shapes;
  }

  private void bay(PouredBay bay) {
    List<Polygon> ribbons =
        bay.ribbons().stream().map(ribbon -> ribbon.outline().polygon()).toList();
    Geometry whole = CascadedPolygonUnion.union(ribbons);
    ShapeMaker shape =
        new ShapeMaker("bay")
            .id(bay.id())
            .room(bay.room())
            .lift(bay.lift())
            .volume(bay.ribbons().stream().mapToDouble(Ribbon::volume).sum());
    shapes.add((bay.pocket() ? shape.what("pocket") : shape).at(PlanShapeGeometry.areas(whole)));
  }

  private void ribbon(PouredBay bay, Ribbon ribbon) {
    shapes.add(
        new ShapeMaker("ribbon")
            .room(bay.room())
            .bay(bay.id())
            .number(ribbon.order())
            .depth(ribbon.meanDepth())
            .volume(ribbon.volume())
            .time(ribbon.start(), ribbon.end())
            .edgeAge(ribbon.edgeAge())
            .at(PlanShapeGeometry.area(ribbon.outline())));
  }

  private void joint(Joint joint) {
    ShapeMaker shape =
        new ShapeMaker("joint")
            .what(joint.kind())
            .bay(joint.bay())
            .length(joint.length())
            .height(joint.height());
    joint.opening().ifPresent(shape::id);
    shapes.add(shape.at(PlanShapeGeometry.line(joint.from(), joint.to())));
  }
}
