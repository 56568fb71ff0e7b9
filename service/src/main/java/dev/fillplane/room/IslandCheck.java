package dev.fillplane.room;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Dimension;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.IntersectionMatrix;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/** Why rings that are sound by themselves do not go together; asked only when they do not. */
final class IslandCheck {

  private final Room room;
  private final Place place;
  private final Findings findings;
  private final Polygon[] rings;
  private boolean found;

  /** Compares every island with the outer ring and with the islands before it. */
  IslandCheck(Room room, Polygon outline, Place place, Findings findings) {
    this.room = room;
    this.place = place;
    this.findings = findings;
    rings = new Polygon[1 + outline.getNumInteriorRing()];
    rings[0] = outline.getFactory().createPolygon(outline.getExteriorRing());
    for (int i = 1; i < rings.length; i++) {
      rings[i] = outline.getFactory().createPolygon(outline.getInteriorRingN(i - 1));
    }
    Map<Geometry, Integer> met = new HashMap<>();
    STRtree islands = new STRtree();
    for (int i = 0; i < rings.length; i++) {
      Integer same = met.putIfAbsent(rings[i].norm(), i);
      if (same != null) {
        error("ring-repeated", i);
      } else if (i > 0) {
        withOutline(i);
        islands.insert(rings[i].getEnvelopeInternal(), i);
      }
    }
    for (int i : met.values().stream().sorted().toList()) {
      if (i > 0) {
        withIslands(i, islands);
      }
    }
  }

  /** Whether a reason was found and noted. */
  boolean found() {
    return found;
  }

  private void withOutline(int island) {
    IntersectionMatrix matrix = rings[0].relate(rings[island]);
    if (!matrix.isIntersects() || !shareInside(matrix)) {
      error("island-outside", island);
    } else if (!matrix.isCovers() || shareSide(matrix)) {
      error("island-crosses-outline", island);
    }
  }

  private void withIslands(int island, STRtree islands) {
    Set<Integer> earlier = new TreeSet<>();
    for (Object near : islands.query(rings[island].getEnvelopeInternal())) {
      earlier.add((Integer) near);
    }
    for (int other : earlier) {
      if (other < island) {
        IntersectionMatrix matrix = rings[other].relate(rings[island]);
        if (shareInside(matrix) || shareSide(matrix)) {
          error("islands-overlap", island);
          return;
        }
      }
    }
  }

  private static boolean shareInside(IntersectionMatrix matrix) {
    return matrix.get(Location.INTERIOR, Location.INTERIOR) == Dimension.A;
  }

  private static boolean shareSide(IntersectionMatrix matrix) {
    return matrix.get(Location.BOUNDARY, Location.BOUNDARY) == Dimension.L;
  }

  private void error(String code, int ring) {
    found = true;
    findings.error(code, place.at(ring), "room", room.id());
  }
}
