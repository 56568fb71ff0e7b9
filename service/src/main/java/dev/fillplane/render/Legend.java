package dev.fillplane.render;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.locationtech.jts.geom.Coordinate;

/** What colours and symbols mean; only what the map shows. */
final class Legend {

  static final double ROW = 22;
  static final double COLUMN = 255;

  /** Entries that a legend has, usually. */
  private static final int USUAL = 18;

  private record Entry(Consumer<Markup> symbol, String text) {}

  private final List<Entry> entries = new ArrayList<>();
  private final Sheet sheet;

  Legend(
      Sheet sheet,
      ReadingLayer readings,
      RibbonLayer ribbons,
      NextLayer next,
      DeviationLayer deviation) {
    this.sheet = sheet;
    colours();
    unsure(deviation);
    spots(readings);
    next(next);
    rooms();
    guides();
    ribbons(ribbons);
  }

  /** What is hatched to be ground. */
  Legend with(GroundLayer ground) {
    if (!ground.isEmpty()) {
      add(
          svg -> Swatches.area(svg, "url(#" + GroundLayer.PATTERN + ")"),
          "grind first, height to take off");
    }
    return this;
  }

  /** Lines round what is poured first. */
  Legend with(PassLayer passes) {
    if (!passes.isEmpty()) {
      add(
          svg -> Swatches.line(svg, "#111", 2.4, "12 3 2 3"),
          "pocket or lower lift: pour it first");
    }
    return this;
  }

  /** Joints and what is kept open. */
  Legend with(FeatureLayer features) {
    if (features.hasJoints()) {
      add(
          svg -> Symbols.joint(svg, new Coordinate(2, 0), new Coordinate(Swatches.WIDTH - 2, 0)),
          "joint with a stop, height in " + sheet.heights().unitName());
    }
    if (features.hasOpenings()) {
      add(svg -> Swatches.area(svg, "url(#" + RoomLayer.ISLAND + ")"), "kept open, not poured");
    }
    return this;
  }

  /** Straightedges over gaps that are too large. */
  Legend with(GapLayer gaps) {
    if (!gaps.isEmpty()) {
      add(
          svg -> Symbols.edge(svg, new Coordinate(2, 0), new Coordinate(Swatches.WIDTH - 2, 0)),
          "straightedge over too large a gap");
    }
    return this;
  }

  private void colours() {
    int first = sheet.classes().first();
    for (int i = first; i < sheet.classes().count() && coloured(); i++) {
      String colour = sheet.classes().colour(i);
      add(svg -> Swatches.area(svg, colour), sheet.classes().text(i));
    }
    if (sheet.partlyBare() && sheet.shows(Layer.DEPTH)) {
      add(
          svg -> Swatches.area(svg, "url(#" + ColourLayer.BARE + ")"),
          "not poured: floor at target or above");
    }
    if (sheet.shows(Layer.CONTOURS) && !sheet.plan().depth().contours().contours().isEmpty()) {
      add(
          svg -> Swatches.line(svg, "#222", 1.2, "none"),
          "contour, every " + sheet.heights().full(sheet.classes().step()));
    }
  }

  private boolean coloured() {
    return sheet.shows(Layer.DEPTH) && sheet.plan().depth().maximum() > 0;
  }

  private void unsure(DeviationLayer deviation) {
    if (!deviation.isEmpty()) {
      add(
          svg -> Swatches.area(svg, "url(#" + DeviationLayer.PATTERN + ")"),
          "floor unsure by " + sheet.heights().full(deviation.limit()) + " or more");
    }
  }

  private void next(NextLayer next) {
    if (!next.isEmpty()) {
      add(svg -> Symbols.next(svg, Swatches.WIDTH / 2, 0, 1), "take a reading here, best first");
    }
  }

  private void spots(ReadingLayer readings) {
    add(svg -> Symbols.high(svg, Swatches.WIDTH / 2, 0), "high spot of the floor");
    if (sheet.plan().depth().maximum() > 0) {
      add(svg -> Symbols.low(svg, Swatches.WIDTH / 2, 0), "low spot: deepest pour");
    }
    if (!readings.isEmpty()) {
      add(
          svg -> Symbols.dot(svg, Swatches.WIDTH / 2, 0),
          sheet.closeUp() ? "reading: depth, minus if too high" : "reading");
    }
    if (readings.hasSuspects()) {
      add(svg -> Symbols.ring(svg, Swatches.WIDTH / 2, 0), "suspect reading: take again");
    }
    if (sheet.shows(Layer.READINGS) && !sheet.request().probes().isEmpty()) {
      add(svg -> Symbols.probe(svg, Swatches.WIDTH / 2, 0), "probe, depth there");
    }
  }

  private void rooms() {
    if (sheet.request().rooms().stream().anyMatch(room -> room.outline().rings().size() > 1)) {
      add(svg -> Swatches.area(svg, "url(#" + RoomLayer.ISLAND + ")"), "island, not poured");
    }
    if (!sheet.plan().quantities().dams().isEmpty()) {
      add(
          svg -> {
            Swatches.line(svg, "#111", 7, "none");
            Swatches.line(svg, "#fff", 3, "5 5");
          },
          "dam, height in " + sheet.heights().unitName());
    }
  }

  private void guides() {
    if (sheet.shows(Layer.GUIDES) && !sheet.plan().pins().isEmpty()) {
      add(
          svg -> Symbols.pin(svg, Swatches.WIDTH / 2, 0),
          "depth pin, height in " + sheet.heights().unitName());
    }
    if (sheet.shows(Layer.GUIDES) && !sheet.plan().rails().isEmpty()) {
      add(
          svg -> Symbols.rail(svg, new Coordinate(0, 0), new Coordinate(Swatches.WIDTH, 0)),
          "screed rail, heights in " + sheet.heights().unitName());
    }
  }

  private void ribbons(RibbonLayer ribbons) {
    if (ribbons.isEmpty()) {
      return;
    }
    add(svg -> Swatches.line(svg, "#111", 1, "5 4"), "edge of a ribbon");
    String every = ribbons.every() == 1 ? "" : " (ends, one in " + ribbons.every() + ")";
    add(Swatches::number, "order of pouring" + every);
    add(
        svg -> Symbols.travel(svg, new Coordinate(0, 0), new Coordinate(Swatches.WIDTH, 0)),
        "direction of travel");
  }

  private void add(Consumer<Markup> symbol, String text) {
    entries.add(new Entry(symbol, text));
  }

  /** Height that a legend below a map of some width usually takes, px. */
  static double below(double width) {
    return 10 + ROW * Math.ceil(USUAL / Math.floor(width / COLUMN));
  }

  /** Its height in so many columns. */
  double height(int columns) {
    return ROW * rows(columns);
  }

  private int rows(int columns) {
    return (entries.size() + columns - 1) / columns;
  }

  /** Column after column from the top left. */
  Markup draw(double left, double top, int columns) {
    Markup svg = new Markup();
    int rows = rows(columns);
    for (int i = 0; i < entries.size(); i++) {
      double x = left + Math.floorDiv(i, rows) * COLUMN;
      double y = top + (i % rows + 0.5) * ROW;
      svg.open("g", "transform", "translate(" + Markup.number(x) + " " + Markup.number(y) + ")");
      entries.get(i).symbol().accept(svg);
      svg.text("text", entries.get(i).text(), "x", Swatches.WIDTH + 10, "y", 4, "font-size", 12);
      svg.close("g");
    }
    return svg;
  }
}
