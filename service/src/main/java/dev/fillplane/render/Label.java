package dev.fillplane.render;

import org.locationtech.jts.geom.Envelope;

/**
 * A text on the map.
 *
 * @param x px of its middle
 * @param y px of its middle
 */
record Label(String text, double x, double y, Look look) {

  private static final double BOLDER = 1.06;

  double width() {
    double plain = Lettering.width(text, look.size());
    double text = look.weight().equals("bold") ? BOLDER * plain : plain;
    return isFramed() ? Math.max(text + 2 * look.padding(), height()) : text;
  }

  double height() {
    return look.size() + 2 * look.padding();
  }

  /** What it covers, frame included. */
  Envelope box() {
    return new Envelope(x - width() / 2, x + width() / 2, y - height() / 2, y + height() / 2);
  }

  Label movedTo(double newX, double newY) {
    return new Label(text, newX, newY, look);
  }

  boolean isFramed() {
    return look.padding() > 0;
  }

  /** The frame, if it has one, and the text. */
  void write(Markup svg) {
    if (isFramed()) {
      svg.leaf(
          "rect",
          "x",
          x - width() / 2,
          "y",
          y - height() / 2,
          "width",
          width(),
          "height",
          height(),
          "rx",
          look.corner(),
          "fill",
          "#fff",
          "stroke",
          "#111",
          "stroke-width",
          1);
    }
    writeText(svg);
  }

  void writeText(Markup svg) {
    svg.text(
        "text",
        text,
        "x",
        x,
        "y",
        y + 0.36 * look.size(),
        "font-size",
        look.size(),
        "font-weight",
        look.weight(),
        "font-style",
        look.slant());
  }
}
