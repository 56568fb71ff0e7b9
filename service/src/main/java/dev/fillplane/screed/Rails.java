package dev.fillplane.screed;

import dev.fillplane.bay.Bay;
import dev.fillplane.bay.BayPlan;
import dev.fillplane.depth.Depths;
import dev.fillplane.room.Position;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/**
 * Sets out screed rails in bays with a mean depth of 15 mm or more: straight, parallel, along the
 * travel, so close that the screed rests on two of them, the first and the last 0.3 m from the
 * walls ({@link RailLines}). They end 1 cm before walls and islands, and where the pour runs out to
 * less than 10 mm; there {@link Pins} go on. Heights are set at both ends and at most 1 m apart;
 * where the floor stands above the target the height is 0. Lengths are common practice without a
 * source.
 */
public final class Rails {

  private static final double GAP = 0.01;
  private static final double SHORTEST = 0.3;
  private static final double STATION = 1.0;
  private static final double STEP = 0.1;
  private static final int MOST_STATIONS = 200;

  private final Bay bay;
  private final Depths depths;
  private final Geometry room;

  private Rails(Bay bay, Depths depths) {
    this.bay = bay;
    this.depths = depths;
    this.room = bay.travel().toFrame().transform(bay.room().outline().polygon());
  }

  /**
   * The rails of all deep bays, in the order of the pour.
   *
   * @param screedLength length of the screed; positive
   */
  public static List<Rail> of(BayPlan plan, Depths depths, double screedLength) {
    List<Rail> rails = new ArrayList<>();
    for (Bay bay : plan.bays()) {
      if (bay.fill().meanDepth() >= Pins.RAILS_FROM) {
        new Rails(bay, depths).add(rails, screedLength);
      }
    }
    return rails;
  }

  private void add(List<Rail> rails, double screedLength) {
    for (double across : RailLines.of(room, screedLength)) {
      for (LineString line : inside(across)) {
        Envelope box = line.getEnvelopeInternal();
        double[] deep = deepPart(box.getMinX() + GAP, box.getMaxX() - GAP, across);
        if (deep[1] - deep[0] >= SHORTEST) {
          Position from = bay.travel().at(deep[0], across);
          Position to = bay.travel().at(deep[1], across);
          List<Station> stations = stations(deep[0], deep[1], across);
          rails.add(new Rail(rails.size() + 1, bay.id(), from, to, stations));
        }
      }
    }
  }

  /** From the first place on a line that is deep enough for a rail to the last. */
  private double[] deepPart(double from, double to, double across) {
    int steps = (int) Math.max(1, Math.ceil((to - from) / STEP));
    double first = Double.POSITIVE_INFINITY;
    double last = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= steps; i++) {
      double at = from + (to - from) * i / steps;
      Position p = bay.travel().at(at, across);
      if (depths.at(p.x(), p.y()) >= Pins.RAILS_END) {
        first = Math.min(first, at);
        last = at;
      }
    }
    return new double[] {first, last};
  }

  @SuppressWarnings("unchecked")
  private List<LineString> inside(double across) {
    Envelope box = room.getEnvelopeInternal();
    Coordinate[] ends = {
      new Coordinate(box.getMinX() - 1, across), new Coordinate(box.getMaxX() + 1, across)
    };
    Geometry common = new GeometryFactory().createLineString(ends).intersection(room);
    List<LineString> lines =
        new ArrayList<>((List<LineString>) LinearComponentExtracter.getLines(common));
    lines.sort((a, b) -> Double.compare(start(a), start(b)));
    return lines;
  }

  private static double start(LineString line) {
    return line.getEnvelopeInternal().getMinX();
  }

  private List<Station> stations(double from, double to, double across) {
    List<Station> stations = new ArrayList<>();
    double step = Math.max(STATION, (to - from) / MOST_STATIONS);
    int whole = (int) Math.ceil((to - from) / step - 1e-6);
    for (int i = 0; i <= whole; i++) {
      double at = Math.min(i * step, to - from);
      Position p = bay.travel().at(from + at, across);
      stations.add(new Station(at, Math.max(0, depths.at(p.x(), p.y()))));
    }
    return stations;
  }
}
