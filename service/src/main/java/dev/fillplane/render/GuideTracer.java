package dev.fillplane.render;

import dev.fillplane.plan.Plan;
import dev.fillplane.room.Position;
import dev.fillplane.screed.Pin;
import dev.fillplane.screed.Rail;
import dev.fillplane.screed.RailSupport;
import dev.fillplane.screed.Station;
import java.util.ArrayList;
import java.util.List;

/** Traces what guides the pour: rails, the stations along them, depth pins. */
final class GuideTracer {

  private final List<PlanShape> shapes = new ArrayList<>();

  private GuideTracer() {}

  static List<PlanShape> trace(Plan plan) {
    GuideTracer tracer = new GuideTracer();
    plan.rails().forEach(tracer::rail);
    plan.rails().forEach(rail -> rail.stations().forEach(s -> tracer.station(rail, s)));
    for (int i = 0; i < plan.pins().size(); i++) {
      tracer.pin(i + 1, plan.pins().get(i));
    }
    return tracer.shapes;
  }

  private void rail(Rail rail) {
    ShapeMaker shape =
        new ShapeMaker("rail").what(rail.support()).bay(rail.bay()).number(rail.id());
    if (rail.support() != RailSupport.EDGE) {
      shape.height(rail.ripWidth());
    }
    shapes.add(shape.at(PlanShapeGeometry.line(rail.from(), rail.to())));
  }

  private void station(Rail rail, Station station) {
    double length = rail.from().distance(rail.to());
    double share = length > 0 ? Math.min(1, station.at() / length) : 0;
    Position at =
        new Position(
            rail.from().x() + share * (rail.to().x() - rail.from().x()),
            rail.from().y() + share * (rail.to().y() - rail.from().y()));
    shapes.add(
        new ShapeMaker("station")
            .bay(rail.bay())
            .number(rail.id())
            .height(station.height())
            .shim(station.shim())
            .at(PlanShapeGeometry.point(at)));
  }

  private void pin(int number, Pin pin) {
    shapes.add(
        new ShapeMaker("pin")
            .number(number)
            .height(pin.height())
            .at(PlanShapeGeometry.point(new Position(pin.x(), pin.y()))));
  }
}
