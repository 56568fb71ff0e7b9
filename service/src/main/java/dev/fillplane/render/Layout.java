package dev.fillplane.render;

import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * How a map lies on its page: the legend beside a high or square map, below a wide one.
 *
 * @param legendBeside whether the legend stands on the right
 */
record Layout(View view, boolean legendBeside) {

  static final double WIDTH = 1100;
  static final double EDGE = 30;
  static final double TOP = EDGE + TitleBlock.HEIGHT;

  private static final double WIDE = 1.7;
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
    boolean beside = width / height <= WIDE;
    double across = WIDTH - 2 * EDGE - (beside ? Legend.COLUMN : 0);
    double down = height > 3 * width ? 1500 : 900;
    double scale =
        Math.min(
            LARGEST_SCALE,
            Math.min(
                (across - 2 * Sheet.MARGIN) / width, (down - 2 * Sheet.MARGIN) / height));
    double left = EDGE + (across - width * scale) / 2;
    return new Layout(new View(extent, scale, left, TOP + Sheet.MARGIN), beside);
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
