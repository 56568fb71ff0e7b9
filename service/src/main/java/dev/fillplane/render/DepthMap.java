package dev.fillplane.render;

import dev.fillplane.depth.DepthSummary;
import dev.fillplane.plan.Plan;
import dev.fillplane.plan.PlanRequest;
import dev.fillplane.room.Room;
import java.util.Set;
import java.util.function.BiFunction;

/**
 * The picture of a plan: how deep where, and what the crew sets out and pours in which order.
 *
 * <p>One SVG document, 1100 px wide and as high as it needs, y up on plan is up on the picture,
 * texts in the caller's units. Colours follow the grid of the plan (linear between the centres of
 * its cells), contours are those of the plan. Texts that would overlap are left out, the less
 * important ones first. The same plan gives the same text.
 */
public final class DepthMap {

  private final Layout layout;
  private final Sheet sheet;
  private final ReadingLayer readings;
  private final RibbonLayer ribbons;
  private final SpotLayer spots;
  private final GuideLayer guides;
  private final OpeningLayer openings;
  private final NextLayer next;
  private final GroundLayer ground;
  private final PassLayer passes;
  private final FeatureLayer features;
  private final GapLayer gaps;
  private final DeviationLayer deviation;
  private final Markup map = new Markup();

  DepthMap(PlanRequest request, Plan plan) {
    this(request, plan, Layer.USUAL, Frame.SCREEN);
  }

  DepthMap(PlanRequest request, Plan plan, Set<Layer> layers, Frame frame) {
    layout = Layout.of(request.rooms(), frame);
    sheet = Sheet.of(request, plan, layout.view(), layout.mapArea(), layers);
    readings = new ReadingLayer(sheet);
    ribbons = new RibbonLayer(sheet);
    spots = new SpotLayer(sheet);
    guides = new GuideLayer(sheet);
    openings = new OpeningLayer(sheet);
    next = new NextLayer(sheet);
    ground = new GroundLayer(sheet);
    passes = new PassLayer(sheet);
    features = new FeatureLayer(sheet);
    gaps = new GapLayer(sheet);
    deviation = new DeviationLayer(sheet);
    shapes();
    texts();
  }

  /**
   * Draws a plan with its usual layers.
   *
   * @param request with at least one room, as it was planned
   * @param plan its answer
   * @return an SVG document
   */
  public static String draw(PlanRequest request, Plan plan) {
    return draw(request, plan, Layer.USUAL);
  }

  /** Draws a plan with some layers. */
  public static String draw(PlanRequest request, Plan plan, Set<Layer> layers) {
    return new DepthMap(request, plan, layers, Frame.SCREEN).document(PictureSize::px).toString();
  }

  /** The usual layers as a part of a page, without a title block, as large as fits, mm. */
  static Markup onPage(PlanRequest request, Plan plan, Frame frame, double width, double height) {
    return new DepthMap(request, plan, Layer.USUAL, frame)
        .document((across, down) -> PictureSize.within(width, height, across, down));
  }

  /** From the ground up. */
  private void shapes() {
    map.add(ColourLayer.draw(sheet))
        .add(deviation.draw())
        .add(ground.draw())
        .add(ribbons.draw())
        .add(ContourLayer.draw(sheet))
        .add(passes.draw())
        .add(gaps.draw())
        .add(RoomLayer.draw(sheet))
        .add(features.draw())
        .add(guides.draw())
        .add(readings.draw())
        .add(next.draw())
        .add(ribbons.arrows())
        .add(openings.draw())
        .add(spots.draw());
  }

  /** What must stand at its place first, then the most important. */
  private void texts() {
    ribbons.numberEnds();
    spots.label();
    RoomLayer.name(sheet);
    openings.label();
    features.label();
    passes.label();
    ground.label();
    gaps.label();
    spots.labelProbes();
    guides.label();
    ribbons.numberOthers();
    readings.label();
    ContourLayer.label(sheet);
    map.add(sheet.labels().write());
  }

  Labels labels() {
    return sheet.labels();
  }

  private Markup document(BiFunction<Double, Double, PictureSize> sizes) {
    Legend legend =
        new Legend(sheet, readings, ribbons, next, deviation)
            .with(ground)
            .with(passes)
            .with(features)
            .with(gaps);
    Frame frame = layout.frame();
    double height = Math.ceil(layout.height(legend.height(layout.legendColumns())));
    PictureSize size = sizes.apply(frame.width(), height);
    String name = sheet.plan().reference().map(told -> ": " + told).orElse("");
    Markup svg =
        size.open(frame.fonts(), frame.width(), height, "depth", "Depth map" + name, description());
    Defs.write(svg, sheet);
    svg.leaf("rect", "width", frame.width(), "height", height, "fill", "#fff");
    if (frame.hasTitle()) {
      double edge = frame.edge();
      svg.add(TitleBlock.draw(sheet, edge, edge, frame.width() - 2 * edge));
    }
    svg.add(map);
    svg.add(ScaleBar.draw(sheet, layout.view().left(), layout.mapBottom() - ScaleBar.HEIGHT));
    svg.add(legend.draw(layout.legendLeft(), layout.legendTop(), layout.legendColumns()));
    return svg.close("svg");
  }

  private String description() {
    DepthSummary depth = sheet.plan().depth();
    Heights heights = sheet.heights();
    return "Plan of "
        + sheet.request().rooms().size()
        + (sheet.request().rooms().size() == 1 ? " room" : " rooms")
        + " with the depth of a self-levelling pour: "
        + heights.full(Math.max(0, depth.minimum()))
        + " to "
        + heights.full(Math.max(0, depth.maximum()))
        + ", "
        + heights.volume(depth.volume())
        + ", "
        + sheet.plan().quantities().bags().order()
        + " bags to order. Rooms: "
        + String.join(", ", sheet.request().rooms().stream().map(Room::id).toList())
        + ". "
        + TitleBlock.CAUTION;
  }
}
