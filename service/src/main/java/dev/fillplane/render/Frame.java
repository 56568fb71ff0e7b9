package dev.fillplane.render;

import org.locationtech.jts.geom.Envelope;

/**
 * The sheet that a map is laid out on.
 *
 * @param width of the picture, px
 * @param edge kept free round it, px
 * @param head height of the title block, px; 0 for none
 * @param usual most height of the rooms, px
 * @param high the same for rooms much higher than wide
 * @param fonts names of fonts, the first choice first
 */
record Frame(double width, double edge, double head, double usual, double high, String fonts) {

  /** A picture by itself. */
  static final Frame SCREEN =
      new Frame(1100, 30, TitleBlock.HEIGHT, 900, 1500, "Arial, Helvetica, sans-serif");

  /** A picture on a page that tells the rest: narrower, so that its texts are larger on paper. */
  static final Frame PAGE = new Frame(780, 3, 0, 560, 700, Paper.FONTS);

  /** The same on a page that is turned, for floors that are much wider than high. */
  static final Frame TURNED_PAGE = new Frame(1140, 3, 0, 230, 230, Paper.FONTS);

  private static final double WIDE = 2.5;

  /** The page for a floor of some extent. */
  static Frame page(Envelope extent) {
    return extent.getWidth() > WIDE * extent.getHeight() ? TURNED_PAGE : PAGE;
  }

  /** Height at which the map begins, px. */
  double top() {
    return edge + head;
  }

  boolean hasTitle() {
    return head > 0;
  }
}
