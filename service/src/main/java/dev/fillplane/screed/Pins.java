package dev.fillplane.screed;

import dev.fillplane.bay.Bay;
import dev.fillplane.bay.BayPlan;
import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * Sets out depth pins in bays with a mean depth under 15 mm, and under 10 mm in deeper bays, where
 * rails end: a grid of 1.5 to 2 m along and across the travel, half a spacing from the walls where
 * that fits and at least 0.3 m; only where something is poured and 0.2 m from the edge. A thin bay
 * whose grid misses the pour gets one pin at the deepest place that a finer grid finds. Lengths are
 * common practice without a source. In pockets, which a later pass covers, none stand.
 */
public final class Pins {

  /** From this mean depth on rails carry the screed; below, pins show the height. */
  public static final double RAILS_FROM = 0.015;

  /** In less than this depth a rail ends and pins go on. */
  static final double RAILS_END = 0.010;

  private static final double FROM_EDGE = 0.2;
  private static final int FINE = 60;

  private final Bay bay;
  private final Envelope box;
  private final IndexedPointInAreaLocator inside;
  private final IndexedFacetDistance edge;

  private Pins(Bay bay) {
    Polygon part = bay.polygon();
    this.bay = bay;
    this.box = bay.travel().toFrame().transform(part).getEnvelopeInternal();
    this.inside = new IndexedPointInAreaLocator(part);
    this.edge = new IndexedFacetDistance(part.getBoundary());
  }

  /** The pins of all bays, in the order of the pour. */
  public static List<Pin> of(BayPlan plan) {
    List<Pin> pins = new ArrayList<>();
    for (Bay bay : plan.bays()) {
      if (!bay.pocket() && bay.fill().volume() > 0) {
        boolean thin = bay.fill().meanDepth() < RAILS_FROM;
        pins.addAll(thin ? new Pins(bay).pins() : new Pins(bay).besideRails());
      }
    }
    return pins;
  }

  private List<Pin> pins() {
    List<Pin> pins = grid();
    if (pins.isEmpty()) {
      deepest(FROM_EDGE).or(() -> deepest(0)).ifPresent(pins::add);
    }
    return pins;
  }

  private List<Pin> besideRails() {
    return grid().stream().filter(pin -> pin.height() < RAILS_END).toList();
  }

  private List<Pin> grid() {
    List<Pin> pins = new ArrayList<>();
    for (double along : PinRows.over(box.getMinX(), box.getMaxX())) {
      for (double across : PinRows.over(box.getMinY(), box.getMaxY())) {
        pin(along, across, FROM_EDGE).ifPresent(pins::add);
      }
    }
    return pins;
  }

  private Optional<Pin> deepest(double fromEdge) {
    Optional<Pin> deepest = Optional.empty();
    for (int i = 0; i < FINE; i++) {
      for (int j = 0; j < FINE; j++) {
        double along = box.getMinX() + (i + 0.5) / FINE * box.getWidth();
        double across = box.getMinY() + (j + 0.5) / FINE * box.getHeight();
        Optional<Pin> next = pin(along, across, fromEdge);
        boolean deeper =
            next.isPresent() && deepest.map(Pin::height).orElse(0.0) < next.get().height();
        deepest = deeper ? next : deepest;
      }
    }
    return deepest;
  }

  private Optional<Pin> pin(double along, double across, double fromEdge) {
    Position p = bay.travel().at(along, across);
    Coordinate place = new Coordinate(p.x(), p.y());
    if (inside.locate(place) != Location.INTERIOR || toEdge(place) < fromEdge) {
      return Optional.empty();
    }
    double depth = bay.depth().at(p.x(), p.y());
    return depth > 0 ? Optional.of(new Pin(p.x(), p.y(), depth)) : Optional.empty();
  }

  private double toEdge(Coordinate place) {
    Geometry point = new GeometryFactory().createPoint(place);
    return edge.distance(point);
  }
}
