package dev.fillplane.screed;

import dev.fillplane.bay.Bay;
import dev.fillplane.bay.BayPlan;
import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/**
 * Sets out screed rails in bays with a mean depth of 15 mm or more: straight, parallel, along the
 * travel, so close that the screed rests on two of them, the first and the last 0.3 m from the
 * walls or on the finished edge of an earlier bay ({@link RailLines}). They end 1 cm before walls
 * and islands, and where the pour runs out to less than 10 mm; there {@link Pins} go on. Heights
 * are set at both ends and at most 1 m apart. A rail is ripped as wide as its shallowest place is
 * deep, looked for every 0.1 m, and packed up elsewhere. Pockets are filled before and need no
 * rails. Lengths are common practice without a source.
 */
public final class Rails {

  private static final double GAP = 0.01;
  private static final double SHORTEST = 0.3;
  private static final double STATION = 1.0;
  private static final double STEP = 0.1;
  private static final int MOST_STATIONS = 200;

  private final Bay bay;
  private final Geometry part;
  private final List<Double> edges;

  private Rails(BayPlan plan, Bay bay) {
    this.bay = bay;
    this.part = bay.travel().toFrame().transform(bay.polygon());
    this.edges = FinishedEdges.of(plan, bay, part.getEnvelopeInternal());
  }

  /**
   * The rails of all deep bays, in the order of the pour.
   *
   * @param screedLength length of the screed; positive
   */
  public static List<Rail> of(BayPlan plan, double screedLength) {
    List<Rail> rails = new ArrayList<>();
    for (Bay bay : plan.bays()) {
      if (!bay.pocket() && bay.fill().meanDepth() >= Pins.RAILS_FROM) {
        List<Rail> own = new Rails(plan, bay).rails(screedLength, rails.size());
        rails.addAll(RemovalOrder.of(bay, own));
      }
    }
    return rails;
  }

  private List<Rail> rails(double screedLength, int before) {
    List<Rail> rails = new ArrayList<>();
    for (RailLine line : RailLines.of(part, screedLength, edges)) {
      for (LineString piece : inside(line)) {
        Envelope box = piece.getEnvelopeInternal();
        for (double[] deep : deepParts(box.getMinX() + GAP, box.getMaxX() - GAP, line.across())) {
          rails.add(rail(before + rails.size() + 1, line, deep[0], deep[1]));
        }
      }
    }
    return rails;
  }

  private Rail rail(int id, RailLine line, double from, double to) {
    double ripWidth = shallowest(from, to, line.across());
    return new Rail(
        id,
        bay.id(),
        line.support(),
        bay.travel().at(from, line.across()),
        bay.travel().at(to, line.across()),
        ripWidth,
        OptionalInt.empty(),
        stations(from, to, line.across(), ripWidth));
  }

  /** The stretches of a line that are deep enough for a rail. */
  private List<double[]> deepParts(double from, double to, double across) {
    List<double[]> parts = new ArrayList<>();
    int steps = steps(from, to);
    double first = Double.NaN;
    double last = Double.NaN;
    for (int i = 0; i <= steps; i++) {
      double at = from + (to - from) * i / steps;
      if (depth(at, across) >= Pins.RAILS_END) {
        first = Double.isNaN(first) ? at : first;
        last = at;
      } else {
        add(parts, first, last);
        first = Double.NaN;
      }
    }
    add(parts, first, last);
    return parts;
  }

  private static void add(List<double[]> parts, double first, double last) {
    if (last - first >= SHORTEST) {
      parts.add(new double[] {first, last});
    }
  }

  private double shallowest(double from, double to, double across) {
    double shallowest = Double.POSITIVE_INFINITY;
    int steps = steps(from, to);
    for (int i = 0; i <= steps; i++) {
      shallowest = Math.min(shallowest, depth(from + (to - from) * i / steps, across));
    }
    return Math.max(0, shallowest);
  }

  private static int steps(double from, double to) {
    return (int) Math.max(1, Math.ceil((to - from) / STEP));
  }

  private double depth(double along, double across) {
    Position p = bay.travel().at(along, across);
    return bay.depth().at(p.x(), p.y());
  }

  /** An edge lies on the outline; just inside it the floor is surely the bay's. */
  @SuppressWarnings("unchecked")
  private List<LineString> inside(RailLine line) {
    Envelope box = part.getEnvelopeInternal();
    double off = box.getHeight() / 1000;
    double across = Math.max(box.getMinY() + off, Math.min(box.getMaxY() - off, line.across()));
    Coordinate[] ends = {
      new Coordinate(box.getMinX() - 1, across), new Coordinate(box.getMaxX() + 1, across)
    };
    Geometry common = new GeometryFactory().createLineString(ends).intersection(part);
    List<LineString> lines =
        new ArrayList<>((List<LineString>) LinearComponentExtracter.getLines(common));
    lines.removeIf(LineString::isEmpty);
    lines.sort((a, b) -> Double.compare(start(a), start(b)));
    return lines;
  }

  private static double start(LineString line) {
    return line.getEnvelopeInternal().getMinX();
  }

  private List<Station> stations(double from, double to, double across, double ripWidth) {
    List<Station> stations = new ArrayList<>();
    double step = Math.max(STATION, (to - from) / MOST_STATIONS);
    int whole = (int) Math.ceil((to - from) / step - 1e-6);
    for (int i = 0; i <= whole; i++) {
      double at = Math.min(i * step, to - from);
      double height = Math.max(0, depth(from + at, across));
      stations.add(new Station(at, height, Math.max(0, height - ripWidth)));
    }
    return stations;
  }
}
