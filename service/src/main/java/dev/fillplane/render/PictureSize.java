package dev.fillplane.render;

/**
 * How large a picture is shown.
 *
 * @param width with its unit, if it is not px
 * @param height with its unit, if it is not px
 */
record PictureSize(String width, String height) {

  /** As large as it is drawn. */
  static PictureSize px(double width, double height) {
    return new PictureSize(Markup.number(width), Markup.number(height));
  }

  /** As large as fits, in mm, without changing its shape. */
  static PictureSize within(double mostAcross, double mostDown, double width, double height) {
    double scale = Math.min(mostAcross / width, mostDown / height);
    return new PictureSize(
        Markup.number(scale * width) + "mm", Markup.number(scale * height) + "mm");
  }
}
