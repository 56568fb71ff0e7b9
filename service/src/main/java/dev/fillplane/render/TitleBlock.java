package dev.fillplane.render;

import dev.fillplane.plan.Plan;
import dev.fillplane.supply.Bags;
import dev.fillplane.target.RoomsPlane;
import dev.fillplane.target.TargetShape;
import dev.fillplane.target.TargetSummary;
import java.util.ArrayList;
import java.util.List;

/** What unit this is and the numbers that matter most. */
final class TitleBlock {

  static final double HEIGHT = 128;
  static final String CAUTION =
      "Estimate. Local code, the data sheet and licensed practice decide.";

  private final Plan plan;
  private final Heights heights;
  private final Markup svg = new Markup();

  private TitleBlock(Sheet sheet) {
    plan = sheet.plan();
    heights = sheet.heights();
  }

  /** The name of the unit, or what the picture is. */
  static String name(Plan plan) {
    return plan.reference().filter(name -> !name.isBlank()).orElse("Depth map");
  }

  static Markup draw(Sheet sheet, double left, double top, double width) {
    TitleBlock block = new TitleBlock(sheet);
    block.head(left, top, width);
    block.facts(left, top + 56, width);
    return block.svg;
  }

  private void head(double left, double top, double width) {
    svg.leaf("rect", "x", left, "y", top, "width", 8, "height", 36, "fill", "#111");
    svg.text(
        "text",
        Lettering.fit(name(plan), 24, width - 420),
        "x",
        left + 18,
        "y",
        top + 27,
        "font-size",
        24,
        "font-weight",
        "bold");
    svg.text(
        "text",
        "Depth of pour in " + heights.unitName() + ", seen from above",
        "x",
        left + width,
        "y",
        top + 14,
        "font-size",
        13,
        "text-anchor",
        "end");
    svg.text(
        "text", CAUTION, "x", left + width, "y", top + 33, "font-size", 11, "text-anchor", "end");
  }

  private void facts(double left, double top, double width) {
    List<String[]> facts = texts();
    double[] shares = {0.32, 0.2, 0.14, 0.14, 0.2};
    svg.leaf("rect", "x", left, "y", top - 8, "width", width, "height", 1.5, "fill", "#111");
    double x = left;
    for (int i = 0; i < facts.size(); i++) {
      svg.text("text", facts.get(i)[0], "x", x, "y", top + 12, "font-size", 12, "fill", "#444");
      svg.text(
          "text", facts.get(i)[1], "x", x, "y", top + 33, "font-size", 17, "font-weight", "bold");
      svg.text("text", facts.get(i)[2], "x", x, "y", top + 50, "font-size", 12);
      x += shares[i] * width;
    }
    svg.leaf("rect", "x", left, "y", top + 60, "width", width, "height", 1.5, "fill", "#111");
  }

  private List<String[]> texts() {
    Bags bags = plan.quantities().bags();
    List<String[]> facts = new ArrayList<>();
    TargetSummary target = plan.target();
    facts.add(new String[] {"Target", shape(target, heights), slope(target)});
    facts.add(new String[] {"Bags to order", "" + bags.order(), "likely " + bags.likely()});
    facts.add(new String[] {"Volume", heights.volume(plan.depth().volume()), ""});
    facts.add(
        new String[] {"Deepest", heights.full(Math.max(0, plan.depth().deepest().depth())), ""});
    String highest = heights.elevation(plan.depth().highest().elevation());
    facts.add(new String[] {"Highest floor", highest, "elevation"});
    return facts;
  }

  /** The target in one line. */
  static String target(TargetSummary target, Heights heights) {
    return shape(target, heights);
  }

  private static String shape(TargetSummary target, Heights heights) {
    if (target.planes().size() > 1) {
      return target.planes().size() + " planes";
    }
    RoomsPlane plane = target.planes().get(0);
    String given = target.shape() == TargetShape.GIVEN ? "given " : "";
    String elevation = heights.elevation(plane.elevation());
    return given + (isLevel(plane) ? "level at " : "plane, ") + elevation;
  }

  private String slope(TargetSummary target) {
    if (target.planes().size() > 1) {
      return "rooms have their own";
    }
    RoomsPlane plane = target.planes().get(0);
    return isLevel(plane)
        ? "elevation"
        : "at the origin; rise "
            + heights.slope(plane.slopeX())
            + " in x, "
            + heights.slope(plane.slopeY())
            + " in y";
  }

  private static boolean isLevel(RoomsPlane plane) {
    return plane.slopeX() == 0 && plane.slopeY() == 0;
  }
}
