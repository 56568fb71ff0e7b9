package dev.fillplane.render;

import dev.fillplane.survey.AdjustedPoint;
import dev.fillplane.survey.Suspect;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;

/** Readings in the rooms: dots with their depths, suspects ringed. */
final class ReadingLayer {

  static final double DOT = 2;
  static final double RING = 8;

  private final Sheet sheet;
  private final List<AdjustedPoint> points = new ArrayList<>();
  private final Set<String> suspects = new TreeSet<>();

  ReadingLayer(Sheet sheet) {
    this.sheet = sheet;
    sheet.plan().elevations().suspects().stream().map(Suspect::point).forEach(suspects::add);
    for (AdjustedPoint point : sheet.plan().elevations().points()) {
      if (sheet.shows(Layer.READINGS)
          && point.x().isPresent()
          && point.y().isPresent()
          && inRooms(point)) {
        points.add(point);
      }
    }
  }

  private boolean inRooms(AdjustedPoint point) {
    Coordinate at = new Coordinate(point.x().getAsDouble(), point.y().getAsDouble());
    return sheet.rooms().stream()
        .anyMatch(room -> SimplePointInAreaLocator.locate(at, room) != Location.EXTERIOR);
  }

  boolean isEmpty() {
    return points.isEmpty();
  }

  boolean hasSuspects() {
    return points.stream().anyMatch(point -> suspects.contains(point.point()));
  }

  Markup draw() {
    Markup svg = new Markup();
    for (AdjustedPoint point : points) {
      double x = sheet.view().x(point.x().getAsDouble());
      double y = sheet.view().y(point.y().getAsDouble());
      boolean suspect = suspects.contains(point.point());
      if (suspect) {
        Symbols.ring(svg, x, y);
      }
      Symbols.dot(svg, x, y);
      sheet.labels().block(x, y, suspect ? RING : DOT + 1);
    }
    return svg;
  }

  /** Suspects first, then the deepest and the highest, then the rest as they come. */
  void label() {
    List<AdjustedPoint> order = new ArrayList<>(points);
    order.sort(Comparator.comparing(point -> !suspects.contains(point.point())));
    points.stream().max(Comparator.comparingDouble(this::depth)).ifPresent(p -> order.add(0, p));
    points.stream().min(Comparator.comparingDouble(this::depth)).ifPresent(p -> order.add(0, p));
    if (!sheet.closeUp()) {
      order.removeIf(point -> !suspects.contains(point.point()));
    }
    Set<String> done = new TreeSet<>();
    for (AdjustedPoint point : order) {
      if (done.add(point.point())) {
        boolean suspect = suspects.contains(point.point());
        String text = sheet.heights().bare(depth(point)) + (suspect ? " ?" : "");
        Label label =
            sheet.label(text, point.x().getAsDouble(), point.y().getAsDouble(), Look.READING);
        sheet.labels().beside(label, suspect ? RING + 1 : DOT + 1.5);
      }
    }
  }

  private double depth(AdjustedPoint point) {
    return sheet.depth(point.x().getAsDouble(), point.y().getAsDouble(), point.elevation());
  }
}
