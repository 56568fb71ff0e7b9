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

  /**
   * The legend goes below where that makes the map so much larger; on a page, whose height is
   * given, wherever it makes it larger at all.
   */
  private static final double GAIN = 1.33;

  private static final double LARGEST_SCALE = 600;
  private static final double SMALLEST_EXTENT = 0.01;

  /** On a sheet of its own. */
  static Layout of(List<Room> rooms) {
    return of(rooms, Frame.SCREEN);
  }

  static Layout of(List<Room> rooms, Frame frame) {
    Envelope extent = extent(rooms);
    boolean beside = isBeside(frame, extent);
    double scale = scale(frame, extent, beside);
    double left = frame.edge() + (across(frame, beside) - width(extent) * scale) / 2;
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

  /** How large rooms of an extent become, px in a metre. */
  static double scale(Frame frame, Envelope extent) {
    return scale(frame, extent, isBeside(frame, extent));
  }

  private static boolean isBeside(Frame frame, Envelope extent) {
    double gain = frame.legend() > 0 ? 1 : GAIN;
    return scale(frame, extent, false) < gain * scale(frame, extent, true);
  }

  private static double across(Frame frame, boolean beside) {
    return frame.width() - 2 * frame.edge() - (beside ? Legend.COLUMN : 0);
  }

  private static double scale(Frame frame, Envelope extent, boolean beside) {
    double down = height(extent) > 3 * width(extent) ? frame.high() : frame.usual();
    double free = down - 2 * Sheet.MARGIN - (beside ? 0 : frame.legend());
    double most = (across(frame, beside) - 2 * Sheet.MARGIN) / width(extent);
    return Math.min(LARGEST_SCALE, Math.min(most, free / height(extent)));
  }

  private static double width(Envelope extent) {
    return Math.max(SMALLEST_EXTENT, extent.getWidth());
  }

  private static double height(Envelope extent) {
    return Math.max(SMALLEST_EXTENT, extent.getHeight());
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
