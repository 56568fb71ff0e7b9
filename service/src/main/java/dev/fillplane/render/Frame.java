package dev.fillplane.render;

import org.locationtech.jts.geom.Envelope;

/**
 * The sheet that a map is laid out on.
 *
 * @param width of the picture, px
 * @param edge kept free round it, px
 * @param head height of the title block, px; 0 for none
 * @param usual most height of the rooms with what stands round them, px
 * @param high the same for rooms much higher than wide
 * @param legend height that a legend below takes of it, px
 * @param fonts names of fonts, the first choice first
 */
record Frame(
    double width,
    double edge,
    double head,
    double usual,
    double high,
    double legend,
    String fonts) {

  /** A picture by itself. */
  static final Frame SCREEN =
      new Frame(1100, 30, TitleBlock.HEIGHT, 900, 1500, 0, "Arial, Helvetica, sans-serif");

  /** What stands above the map takes so much of a page, mm. */
  static final double ABOVE = 90;

  private static final double UPRIGHT = 780;
  private static final double TURNED = 1140;
  private static final double EDGE = 3;

  /** The page is turned where that makes the map so much larger. */
  private static final double GAIN = 1.1;

  /**
   * A picture on the first page of a sheet, which tells the rest: narrower, so that its texts are
   * about 8 pt on paper, and turned for floors that are much wider than high.
   */
  static Frame page(Envelope extent, Paper paper) {
    Frame upright = page(UPRIGHT, paper.across(), paper.down());
    Frame turned = page(TURNED, paper.turnedAcross(), paper.turnedDown());
    return Layout.scale(turned, extent) > GAIN * Layout.scale(upright, extent) ? turned : upright;
  }

  private static Frame page(double width, double across, double down) {
    double height = (down - ABOVE) * width / across - 2 * EDGE - ScaleBar.HEIGHT;
    return new Frame(width, EDGE, 0, height, height, Legend.below(width - 2 * EDGE), Paper.FONTS);
  }

  boolean isTurned() {
    return width == TURNED;
  }

  /** Height at which the map begins, px. */
  double top() {
    return edge + head;
  }

  boolean hasTitle() {
    return head > 0;
  }
}
