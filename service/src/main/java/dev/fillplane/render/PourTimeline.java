package dev.fillplane.render;

import dev.fillplane.plan.Plan;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.pour.Pour;
import dev.fillplane.pour.Worker;
import java.util.ArrayList;
import java.util.List;

/**
 * The picture of who does what when: rows of time, in each a lane for every person with what they
 * do for which batch, and the age of every wet edge as it is met against the age from which on it
 * no longer closes.
 *
 * <p>One SVG document, 780 px wide and as high as it needs. Work is told apart by pattern and word
 * as well as colour. The same plan gives the same text.
 */
public final class PourTimeline {

  private static final double WIDTH = 780;
  private static final double HEAD = 62;
  private static final double GAP = 14;
  private static final String IDS = "time";

  private final PlanRequest request;
  private final Plan plan;

  private PourTimeline(PlanRequest request, Plan plan) {
    this.request = request;
    this.plan = plan;
  }

  /**
   * Draws a plan.
   *
   * @param request as it was planned
   * @param plan its answer
   * @return an SVG document
   */
  public static String draw(PlanRequest request, Plan plan) {
    return new PourTimeline(request, plan).whole().toString();
  }

  /** The same as parts of a page, each as wide as told, in mm: the rows, then what they mean. */
  static List<Markup> onPage(PlanRequest request, Plan plan, double width) {
    return new PourTimeline(request, plan).parts(width);
  }

  private Markup whole() {
    List<Stretch> rows = Stretch.of(end());
    double height = HEAD + rows.size() * (row() + GAP) + TimeLegend.HEIGHT;
    Markup svg = open(PictureSize.px(WIDTH, height), height, IDS, "Who does what when", told());
    svg.leaf("rect", "width", WIDTH, "height", height, "fill", "#fff");
    head(svg);
    double top = HEAD;
    for (Stretch row : rows) {
      svg.add(row(row, IDS, top));
      top += row() + GAP;
    }
    return svg.add(TimeLegend.draw(plan.pour(), IDS, top)).close("svg");
  }

  private void head(Markup svg) {
    svg.leaf("rect", "x", 2, "y", 10, "width", 8, "height", 34, "fill", "#111");
    String name = Lettering.fit(plan.reference().orElse("Who does what when"), 20, WIDTH - 340);
    svg.text("text", name, "x", 18, "y", 34, "font-size", 20, "font-weight", "bold");
    svg.text(
        "text",
        "Who does what when",
        "x",
        WIDTH - 4,
        "y",
        22,
        "font-size",
        13,
        "text-anchor",
        "end");
    svg.text(
        "text",
        "Estimate with usual times",
        "x",
        WIDTH - 4,
        "y",
        40,
        "font-size",
        11,
        "text-anchor",
        "end");
  }

  private List<Markup> parts(double width) {
    List<Markup> parts = new ArrayList<>();
    for (Stretch row : Stretch.of(end())) {
      String ids = IDS + parts.size();
      PictureSize size = PictureSize.within(width, Double.MAX_VALUE, WIDTH, row());
      String title = "From " + Minutes.hours(row.from()) + " to " + Minutes.hours(row.to());
      Markup svg = open(size, row(), ids, title, told());
      parts.add(svg.add(row(row, ids, 0)).close("svg"));
    }
    String ids = IDS + parts.size();
    PictureSize size = PictureSize.within(width, Double.MAX_VALUE, WIDTH, TimeLegend.HEIGHT);
    Markup svg = open(size, TimeLegend.HEIGHT, ids, "What the bars mean", "The kinds of work.");
    parts.add(svg.add(TimeLegend.draw(plan.pour(), ids, 0)).close("svg"));
    return parts;
  }

  private Markup open(PictureSize size, double height, String ids, String title, String told) {
    Markup svg = size.open(Paper.FONTS, WIDTH, height, ids, title, told);
    svg.open("defs");
    for (TaskLook look : TaskLook.values()) {
      look.define(svg, ids);
    }
    return svg.close("defs");
  }

  private double row() {
    return TimeAxis.HEIGHT + PersonLanes.height(plan.pour()) + EdgeLane.HEIGHT;
  }

  private Markup row(Stretch stretch, String ids, double top) {
    double lanes = top + TimeAxis.HEIGHT;
    double edges = lanes + PersonLanes.height(plan.pour());
    Markup svg = new TimeAxis(request, stretch).draw(top, row() - TimeAxis.HEIGHT);
    svg.add(new PersonLanes(plan.pour(), stretch, ids).draw(lanes));
    return svg.add(
        new EdgeLane(stretch, plan.mix().healingTime(), edges).draw(plan.pour().batches()));
  }

  private double end() {
    return Math.max(plan.pour().totals().end(), 1);
  }

  private String told() {
    Pour pour = plan.pour();
    StringBuilder text = new StringBuilder("Batches: " + pour.batches().size() + ".");
    for (Worker worker : pour.workers()) {
      List<String> words = worker.roles().stream().map(role -> TaskLook.of(role).word()).toList();
      text.append(" Person ").append(worker.number()).append(": ");
      text.append(words.isEmpty() ? "stands by" : String.join(", ", words)).append('.');
    }
    return text.append(" Edges close for ")
        .append(Minutes.tenth(plan.mix().healingTime()))
        .append(" min.")
        .toString();
  }
}
