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

  /**
   * Opens a picture that is shown in this size.
   *
   * @param fonts its families, the first that is there is used
   * @param across width of what is drawn
   * @param down height of what is drawn
   * @param ids what the ids of its title and its description begin with
   */
  Markup open(
      String fonts, double across, double down, String ids, String title, String description) {
    Markup svg = new Markup();
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "role",
        "img",
        "viewBox",
        "0 0 " + Markup.number(across) + " " + Markup.number(down),
        "width",
        width,
        "height",
        height,
        "font-family",
        fonts,
        "fill",
        "#111",
        "aria-labelledby",
        ids + "-title " + ids + "-desc");
    svg.text("title", title, "id", ids + "-title");
    svg.text("desc", description, "id", ids + "-desc");
    return svg;
  }
}
