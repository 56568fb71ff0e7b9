package dev.fillplane.render;

import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * How a map lies on its page: the legend beside the map, or below it where the map then grows.
 *
 * @param frame the sheet it lies on
 * @param legendBeside whether the legend stands on the right
 */
record Layout(Frame frame, View view, boolean legendBeside) {

  /** The legend goes below where that makes the map so much larger. */
  private static final double GAIN = 1.33;

  private static final double LARGEST_SCALE = 600;
  private static final double SMALLEST_EXTENT = 0.01;

  /** On a sheet of its own. */
  static Layout of(List<Room> rooms) {
    return of(rooms, Frame.SCREEN);
  }

  static Layout of(List<Room> rooms, Frame frame) {
    Envelope extent = extent(rooms);
    double width = Math.max(SMALLEST_EXTENT, extent.getWidth());
    double height = Math.max(SMALLEST_EXTENT, extent.getHeight());
    boolean beside = scale(frame, width, height, false) < GAIN * scale(frame, width, height, true);
    double scale = scale(frame, width, height, beside);
    double left = frame.edge() + (across(frame, beside) - width * scale) / 2;
    return new Layout(frame, new View(extent, scale, left, frame.top() + Sheet.MARGIN), beside);
  }

  /** The box of the rooms on plan. */
  static Envelope extent(List<Room> rooms) {
    Envelope extent = new Envelope();
    for (Room room : rooms) {
      for (List<Position> ring : room.outline().rings()) {
        ring.forEach(p -> extent.expandToInclude(p.x(), p.y()));
      }
    }
    return extent;
  }

  private static double across(Frame frame, boolean beside) {
    return frame.width() - 2 * frame.edge() - (beside ? Legend.COLUMN : 0);
  }

  private static double scale(Frame frame, double width, double height, boolean beside) {
    double down = height > 3 * width ? frame.high() : frame.usual();
    double most = (across(frame, beside) - 2 * Sheet.MARGIN) / width;
    return Math.min(LARGEST_SCALE, Math.min(most, (down - 2 * Sheet.MARGIN) / height));
  }

  /** Where the map may have texts, px. */
  Envelope mapArea() {
    double right = frame.edge() + across(frame, legendBeside);
    return new Envelope(
        frame.edge(), right, frame.top(), view.top() + view.height() + Sheet.MARGIN);
  }

  /** Lower end of the map, scale bar included. */
  double mapBottom() {
    return view.top() + view.height() + Sheet.MARGIN + ScaleBar.HEIGHT;
  }

  int legendColumns() {
    return legendBeside ? 1 : (int) ((frame.width() - 2 * frame.edge()) / Legend.COLUMN);
  }

  double legendLeft() {
    return legendBeside ? frame.width() - frame.edge() - Legend.COLUMN + 10 : frame.edge();
  }

  double legendTop() {
    return legendBeside ? frame.top() + 20 : mapBottom() + 10;
  }

  double height(double legendHeight) {
    return Math.max(mapBottom(), legendTop() + legendHeight) + frame.edge();
  }
}
