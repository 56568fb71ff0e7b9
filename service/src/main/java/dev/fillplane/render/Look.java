package dev.fillplane.render;

/** How a label looks; sizes in px. */
enum Look {
  SPOT(12, "bold", "normal", 0, 0),
  EXIT(13, "bold", "normal", 0, 0),
  ROOM(13, "bold", "normal", 0, 0),
  SCALE(11, "normal", "normal", 0, 0),
  CONTOUR(12, "bold", "italic", 0, 0),
  RIBBON(11, "bold", "normal", 8, 3),
  RAIL(11, "bold", "normal", 2, 2),
  GUIDE(12, "normal", "normal", 0, 0),
  DAM(11, "bold", "normal", 0, 0),
  READING(12, "normal", "normal", 0, 0);

  private final double size;
  private final String weight;
  private final String slant;
  private final double corner;
  private final double padding;

  Look(double size, String weight, String slant, double corner, double padding) {
    this.size = size;
    this.weight = weight;
    this.slant = slant;
    this.corner = corner;
    this.padding = padding;
  }

  double size() {
    return size;
  }

  String weight() {
    return weight;
  }

  String slant() {
    return slant;
  }

  /** Radius of the frame's corners. */
  double corner() {
    return corner;
  }

  /** Room between text and frame; 0 where there is no frame. */
  double padding() {
    return padding;
  }
}
