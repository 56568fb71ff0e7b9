package dev.fillplane.render;

import dev.fillplane.plan.PlanRequest;
import dev.fillplane.pour.Break;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/** The time along a row: minutes from the start of the work, or the clock; breaks shaded. */
final class TimeAxis {

  static final double HEIGHT = 20;

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");
  private static final double MINUTE = 60;

  private final PlanRequest request;
  private final Stretch stretch;

  TimeAxis(PlanRequest request, Stretch stretch) {
    this.request = request;
    this.stretch = stretch;
  }

  /** Marks from the axis down over lanes of a height. */
  Markup draw(double top, double lanes) {
    Markup svg = new Markup();
    String what = request.crew().start().isPresent() ? "Clock" : "Minute";
    svg.text("text", what, "x", 2, "y", top + 14, "font-size", 12, "font-weight", "bold");
    breaks(svg, top + HEIGHT, lanes);
    double mark = stretch.mark();
    int count = (int) Math.round((stretch.to() - stretch.from()) / mark);
    for (int i = 0; i <= count; i++) {
      mark(svg, stretch.from() + i * mark, top, lanes);
    }
    return svg;
  }

  private void mark(Markup svg, double moment, double top, double lanes) {
    double x = stretch.x(moment);
    PathData line =
        new PathData()
            .line(new Coordinate(x, top + HEIGHT - 4), new Coordinate(x, top + HEIGHT + lanes));
    svg.leaf("path", "d", line, "fill", "none", "stroke", "#999", "stroke-width", 0.7);
    String anchor = x > Stretch.RIGHT - 20 ? "end" : "middle";
    svg.text("text", text(moment), "x", x, "y", top + 13, "font-size", 12, "text-anchor", anchor);
  }

  private String text(double moment) {
    Optional<String> start = request.crew().start();
    return start.isPresent()
        ? LocalTime.parse(start.get()).plusSeconds((long) moment).format(CLOCK)
        : Markup.number(moment / MINUTE);
  }

  private void breaks(Markup svg, double top, double lanes) {
    for (Break pause : request.crew().breaks()) {
      double end = pause.at() + pause.length();
      if (stretch.shows(pause.at(), end)) {
        double x = stretch.x(pause.at());
        double width = stretch.x(end) - x;
        svg.leaf("rect", "x", x, "y", top, "width", width, "height", lanes, "fill", "#e8e8e8");
        svg.text(
            "text", Lettering.fit("break", 11, width), "x", x + 2, "y", top + 11, "font-size", 11);
      }
    }
  }
}
