package dev.fillplane.render;

import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * How a map lies on its page: the legend beside the map, or below it where the map then grows.
 *
 * @param legendBeside whether the legend stands on the right
 */
record Layout(View view, boolean legendBeside) {

  static final double WIDTH = 1100;
  static final double EDGE = 30;
  static final double TOP = EDGE + TitleBlock.HEIGHT;

  /** The legend goes below where that makes the map so much larger. */
  private static final double GAIN = 1.33;

  private static final double USUAL = 900;
  private static final double HIGH = 1500;
  private static final double LARGEST_SCALE = 600;
  private static final double SMALLEST_EXTENT = 0.01;

  static Layout of(List<Room> rooms) {
    Envelope extent = new Envelope();
    for (Room room : rooms) {
      for (List<Position> ring : room.outline().rings()) {
        ring.forEach(p -> extent.expandToInclude(p.x(), p.y()));
      }
    }
    double width = Math.max(SMALLEST_EXTENT, extent.getWidth());
    double height = Math.max(SMALLEST_EXTENT, extent.getHeight());
    boolean beside = scale(width, height, false) < GAIN * scale(width, height, true);
    double across = across(beside);
    double scale = scale(width, height, beside);
    double left = EDGE + (across - width * scale) / 2;
    return new Layout(new View(extent, scale, left, TOP + Sheet.MARGIN), beside);
  }

  private static double across(boolean beside) {
    return WIDTH - 2 * EDGE - (beside ? Legend.COLUMN : 0);
  }

  private static double scale(double width, double height, boolean beside) {
    double down = height > 3 * width ? HIGH : USUAL;
    double most = (across(beside) - 2 * Sheet.MARGIN) / width;
    return Math.min(LARGEST_SCALE, Math.min(most, (down - 2 * Sheet.MARGIN) / height));
  }

  /** Where the map may have texts, px. */
  Envelope mapArea() {
    double right = EDGE + across(legendBeside);
    return new Envelope(EDGE, right, TOP, view.top() + view.height() + Sheet.MARGIN);
  }

  /** Lower end of the map, scale bar included. */
  double mapBottom() {
    return view.top() + view.height() + Sheet.MARGIN + ScaleBar.HEIGHT;
  }

  int legendColumns() {
    return legendBeside ? 1 : (int) ((WIDTH - 2 * EDGE) / Legend.COLUMN);
  }

  double legendLeft() {
    return legendBeside ? WIDTH - EDGE - Legend.COLUMN + 10 : EDGE;
  }

  double legendTop() {
    return legendBeside ? TOP + 20 : mapBottom() + 10;
  }

  double height(double legendHeight) {
    return Math.max(mapBottom(), legendTop() + legendHeight) + EDGE;
  }
}
