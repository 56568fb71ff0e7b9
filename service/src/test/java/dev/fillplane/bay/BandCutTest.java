package dev.fillplane.bay;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Bands and their seams, held against the overlay, in rooms that lie askew as in straight ones. */
class BandCutTest {

  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** A part of the floor in some frame of a travel; every other one is convex. */
  private static Polygon part(int i, SeededRooms rooms, Random random) {
    Polygon room = rooms.next().outline().polygon();
    Polygon part = i % 2 == 0 ? room : (Polygon) room.convexHull();
    AffineTransformation turn =
        AffineTransformation.rotationInstance(i % 4 < 2 ? 0 : 6 * random.nextDouble());
    part = (Polygon) turn.transform(i % 3 == 0 ? part.reverse() : part);
    return part;
  }

  private static double line(Polygon part, int row, int count) {
    Envelope box = part.getEnvelopeInternal();
    return Overlay.LATTICE.makePrecise(box.getMinX() + row * box.getWidth() / count);
  }

  private static List<Polygon> between(Polygon part, int row, int count) {
    double from = row == 0 ? line(part, 0, count) - 1 : line(part, row, count);
    double to = line(part, row + 1, count) + (row == count - 1 ? 1 : 0);
    return new BandCut(part).between(from, to);
  }

  private static List<Polygon> plainly(Polygon part, int row, int count) {
    Envelope box = part.getEnvelopeInternal();
    double from = row == 0 ? box.getMinX() - 1 : line(part, row, count);
    double to = row == count - 1 ? box.getMaxX() + 1 : line(part, row + 1, count);
    return Overlay.common(
        part, GEOMETRY.toGeometry(new Envelope(from, to, box.getMinY() - 1, box.getMaxY() + 1)));
  }

  @Test
  void piecesAreThoseOfTheOverlayToTheLastDigit() {
    SeededRooms rooms = new SeededRooms(5);
    Random random = new Random(6);
    for (int i = 0; i < 60; i++) {
      Polygon part = part(i, rooms, random);
      int count = 1 + random.nextInt(20);
      for (int row = 0; row < count; row++) {
        assertEquals(plainly(part, row, count), between(part, row, count), i + ": " + row);
      }
    }
  }

  @Test
  void seamsAreThoseOfTheOverlay() {
    SeededRooms rooms = new SeededRooms(7);
    Random random = new Random(8);
    for (int i = 0; i < 60; i++) {
      Polygon part = part(i, rooms, random);
      int count = 2 + random.nextInt(20);
      for (int row = 1; row < count; row++) {
        for (Polygon one : between(part, row - 1, count)) {
          for (Polygon other : between(part, row, count)) {
            assertEquals(plainly(one, other), shared(one, other), 1e-7, i + ": " + row);
          }
        }
      }
    }
  }

  private static double shared(Polygon one, Polygon other) {
    return CrossEdges.shared(one, other).stream().mapToDouble(range -> range[1] - range[0]).sum();
  }

  private static double plainly(Polygon one, Polygon other) {
    return Overlay.seam(one, other).stream().mapToDouble(LineString::getLength).sum();
  }
}
