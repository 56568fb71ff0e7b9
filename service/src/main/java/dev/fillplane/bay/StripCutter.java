package dev.fillplane.bay;

import dev.fillplane.depth.Fill;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * Cuts a bay into strips of equal width across the travel. The width is the one whose fullest strip
 * takes one batch, found from the strips of the narrowest width. Strips that fall apart count as
 * several ribbons; crumbs under 1 cm2 and necks under 10 cm go to the strip that they touch.
 */
final class StripCutter {

  private record Cut(int rows, List<Piece> pieces) {

    double fullest() {
      double[] volumes = new double[rows];
      double most = 0;
      for (Piece piece : pieces) {
        volumes[piece.row()] += piece.fill().volume();
        most = Math.max(most, volumes[piece.row()]);
      }
      return most;
    }
  }

  private final Room room;
  private final BandCut part;
  private final TravelChoice choice;
  private final PassDepth depth;
  private final RibbonRule rule;

  private StripCutter(
      Room room, Polygon part, TravelChoice choice, PassDepth depth, RibbonRule rule) {
    this.room = room;
    this.part = new BandCut((Polygon) choice.travel().toFrame().transform(part));
    this.choice = choice;
    this.depth = depth;
    this.rule = rule;
  }

  /** The ribbons of a part of a room in the order of the pour. */
  static List<Strip> cut(
      Room room, Polygon part, TravelChoice choice, PassDepth depth, RibbonRule rule) {
    Cut cut = new StripCutter(room, part, choice, depth, rule).cut();
    return StripOrder.of(cut.pieces, choice, choice.extent().getWidth() / cut.rows).strips();
  }

  private Cut cut() {
    double extent = choice.extent().getWidth();
    Cut narrow = cut(rule.narrowStrips(extent));
    int rows = rule.strips(extent, narrow.fullest() * narrow.rows / extent);
    Cut cut = rows == narrow.rows ? narrow : cut(rows);
    while (cut.pieces.size() > rule.most() && cut.rows > 1) {
      cut = cut(Math.max(1, cut.rows * rule.most() / cut.pieces.size()));
    }
    return cut;
  }

  private Cut cut(int rows) {
    return new Cut(rows, pieces(rows));
  }

  private List<Piece> pieces(int count) {
    List<List<Polygon>> shapes = new ArrayList<>();
    for (int row = 0; row < count; row++) {
      List<Polygon> strips = strips(row, count);
      shapes.add(new ArrayList<>(strips.stream().map(Necks::cut).flatMap(List::stream).toList()));
    }
    Crumbs.sweep(shapes);
    List<Piece> pieces = new ArrayList<>();
    for (int row = 0; row < count; row++) {
      for (Polygon shape : shapes.get(row)) {
        pieces.add(new Piece(row, shape, fill(shape)));
      }
    }
    return pieces;
  }

  private List<Polygon> strips(int row, int count) {
    Envelope box = choice.extent();
    double from = row == 0 ? box.getMinX() - 1 : line(row, count);
    double to = row == count - 1 ? box.getMaxX() + 1 : line(row + 1, count);
    return part.between(from, to);
  }

  private double line(int row, int count) {
    Envelope box = choice.extent();
    return Overlay.LATTICE.makePrecise(box.getMinX() + row * box.getWidth() / count);
  }

  private Fill fill(Polygon shape) {
    return depth.within(room, (Polygon) choice.travel().toPlan().transform(shape));
  }
}
