package dev.fillplane.render;

import dev.fillplane.depth.GroundArea;
import dev.fillplane.plan.Plan;
import dev.fillplane.room.Position;
import java.util.List;

/** What is done and set out before the pour: grinding, what is kept open, pins, rails, dams. */
final class SetOutPage {

  /** Most height of the map, mm. */
  private static final double MAP = 165;

  private final PageInput input;
  private final Plan plan;
  private final Figures figures;
  private final Markup html = new Markup();

  private SetOutPage(PageInput input) {
    this.input = input;
    plan = input.plan();
    figures = input.figures();
  }

  static Markup write(PageInput input) {
    SetOutPage page = new SetOutPage(input);
    page.html.text("h2", "Set out before the pour");
    page.html.text(
        "p",
        "Places are told as right / up from the origin of the plan. Heights are above the floor"
            + " as it is.",
        "class",
        "small");
    page.primer();
    page.map();
    page.ground();
    page.keptOpen();
    page.html.add(GuideTables.pins(input)).add(GuideTables.rails(input));
    page.html.add(StopTables.dams(input)).add(StopTables.joints(input));
    return page.html;
  }

  private boolean mayHoldAsbestos() {
    return plan.safety().stream().anyMatch(note -> note.code().startsWith("asbestos-"));
  }

  private void map() {
    html.open("div", "class", "picture row");
    html.add(SetOutMap.onPage(input, input.paper().across(), MAP));
    html.close("div");
  }

  private void ground() {
    List<GroundArea> areas = plan.grinding().areas();
    if (areas.isEmpty()) {
      return;
    }
    HtmlTable table =
        new HtmlTable(
            html,
            "ground",
            mayHoldAsbestos()
                ? "Only once the floor is tested for asbestos: grind, with a shroud and a collector"
                : "Grind first, with a shroud and a collector",
            List.of("Area", "Highest place", "Take off there", "Size"));
    table.rows();
    for (int i = 0; i < areas.size(); i++) {
      GroundArea area = areas.get(i);
      table.row(
          "area",
          List.of(
              Integer.toString(i + 1),
              figures.place(new Position(area.x(), area.y())),
              input.heights().full(area.height()),
              figures.area(area.area())));
    }
    table.endRows().end();
  }

  private void keptOpen() {
    if (plan.preparation().keepOpen().isEmpty()) {
      return;
    }
    html.text("h3", "Keep open");
    html.open("ul");
    plan.preparation().keepOpen().forEach(kept -> html.text("li", input.text(kept.what())));
    html.close("ul");
  }

  private void primer() {
    if (!input.isPoured()) {
      return;
    }
    String coats = plan.quantities().primer().coats() == 1 ? " coat" : " coats";
    html.text(
        "p",
        "Primer: "
            + figures.liquid(plan.quantities().primer().liquid())
            + ", "
            + plan.quantities().primer().coats()
            + coats
            + ", no puddles. Perimeter strip along walls and islands: "
            + figures.length(plan.quantities().perimeterSeal())
            + ".");
  }
}
