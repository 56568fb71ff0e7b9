package dev.fillplane.render;

import dev.fillplane.depth.Deepest;
import dev.fillplane.depth.Highest;
import dev.fillplane.depth.Probe;
import dev.fillplane.depth.ProbeWish;

/** High spot, low spot and probes. */
final class SpotLayer {

  private static final double REACH = 9;

  private final Sheet sheet;

  SpotLayer(Sheet sheet) {
    this.sheet = sheet;
  }

  Markup draw() {
    Markup svg = new Markup();
    for (ProbeWish probe : sheet.request().probes()) {
      double x = sheet.view().x(probe.x());
      double y = sheet.view().y(probe.y());
      if (shown(x, y)) {
        Symbols.probe(svg, x, y);
        sheet.labels().block(x, y, 7);
      }
    }
    Highest high = sheet.plan().depth().highest();
    Symbols.high(svg, sheet.view().x(high.x()), sheet.view().y(high.y()));
    sheet.labels().block(sheet.view().x(high.x()), sheet.view().y(high.y()), REACH);
    if (isPoured()) {
      Deepest low = sheet.plan().depth().deepest();
      Symbols.low(svg, sheet.view().x(low.x()), sheet.view().y(low.y()));
      sheet.labels().block(sheet.view().x(low.x()), sheet.view().y(low.y()), REACH);
    }
    return svg;
  }

  boolean isPoured() {
    return sheet.plan().depth().maximum() > 0;
  }

  private boolean shown(double x, double y) {
    return sheet.shows(Layer.READINGS) && sheet.view().box(Sheet.MARGIN).contains(x, y);
  }

  void label() {
    Highest high = sheet.plan().depth().highest();
    double depth = sheet.depth(high.x(), high.y(), high.elevation());
    String over = depth < 0 ? " over target" : "";
    near("HIGH", sheet.heights().full(Math.abs(depth)) + over, high.x(), high.y());
    if (isPoured()) {
      Deepest low = sheet.plan().depth().deepest();
      near("LOW", sheet.heights().full(low.depth()), low.x(), low.y());
    }
  }

  /** With fewer words where the room is small. */
  private void near(String kind, String height, double x, double y) {
    Label label = sheet.label(kind + " SPOT " + height, x, y, Look.SPOT);
    Label shorter = sheet.label(kind + " " + height, x, y, Look.SPOT);
    sheet.labels().near(label, REACH + 1, shorter, sheet.label(height, x, y, Look.SPOT));
  }

  void labelProbes() {
    for (ProbeWish wish : sheet.request().probes()) {
      if (!shown(sheet.view().x(wish.x()), sheet.view().y(wish.y()))) {
        continue;
      }
      for (Probe probe : sheet.plan().depth().probes()) {
        if (probe.id().equals(wish.id())) {
          String name = Lettering.fit(probe.id(), Look.GUIDE.size(), 180);
          String height = sheet.heights().bare(probe.depth());
          Label label = sheet.label((name + " " + height).strip(), wish.x(), wish.y(), Look.GUIDE);
          sheet.labels().near(label, 8, sheet.label(height, wish.x(), wish.y(), Look.GUIDE));
        }
      }
    }
  }
}
