package dev.fillplane.render;

import dev.fillplane.plan.Plan;
import dev.fillplane.pour.Batch;
import dev.fillplane.pour.Change;
import dev.fillplane.pour.Healing;
import dev.fillplane.pour.PouredBay;
import dev.fillplane.pour.Ribbon;
import dev.fillplane.pour.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The order of pouring: why it holds or not, every batch with its times, and the timeline. */
final class OrderPage {

  static final String EMPTY_BOX = "\u2610";
  private static final int RING_EVERY = 10;

  private final PageInput input;
  private final Plan plan;
  private final Markup html = new Markup();

  private OrderPage(PageInput input) {
    this.input = input;
    plan = input.plan();
  }

  static Markup write(PageInput input) {
    OrderPage page = new OrderPage(input);
    page.html.text("h2", "Order of pouring");
    page.reasons();
    if (input.isPoured()) {
      page.batches();
      page.timeline();
    }
    return page.html;
  }

  static String word(Verdict verdict) {
    return verdict.name().toLowerCase(Locale.ROOT);
  }

  private void reasons() {
    html.open("ul", "class", "reasons");
    plan.pour().reasons().forEach(reason -> html.text("li", input.text(reason)));
    for (Change change : plan.pour().changes()) {
      html.open("li");
      html.text("strong", "Better (then: " + word(change.verdict()) + ") ");
      html.text("span", input.text(change.remark()));
      html.close("li");
    }
    html.close("ul");
  }

  private void batches() {
    boolean clock = plan.pour().batches().stream().allMatch(batch -> batch.clock().isPresent());
    String times = clock ? "by the clock" : "in minutes from the start of the work";
    HtmlTable table =
        new HtmlTable(html, "batches", "Every batch, " + times + ". " + edges(), names());
    int number = 0;
    for (PouredBay bay : plan.pour().bays()) {
      List<Batch> batches =
          plan.pour().batches().stream().filter(batch -> batch.bay().equals(bay.id())).toList();
      if (!batches.isEmpty()) {
        table.group(heading(bay, batches));
        for (Batch batch : batches) {
          number++;
          table.row("batch " + kind(batch), cells(number, batch));
        }
        table.endRows();
      }
    }
    table.end();
    html.text(
        "p",
        "Spread ring on the first and on every "
            + RING_EVERY
            + "th batch (\u25CB). Water to the mark, never more. Nothing is eked out with water.",
        "class",
        "small");
  }

  private void timeline() {
    html.text("h3", "Who does what when");
    for (Markup part : PourTimeline.onPage(input.request(), plan, input.paper().across())) {
      html.open("div", "class", "picture row").add(part).close("div");
    }
  }

  private String edges() {
    double healing = plan.mix().healingTime();
    return "Edge: its age when the batch meets it; over "
        + Minutes.tenth(Healing.of(healing).limit())
        + " min tight, over "
        + Minutes.tenth(healing)
        + " min late.";
  }

  private List<String> names() {
    return List.of(
        "No.",
        "In bay",
        "Bags",
        "Water " + input.figures().liquidUnit(),
        "Open bags",
        "Mixed",
        "On floor",
        "Rolled min",
        "Ribbons",
        "Edge min",
        "Done");
  }

  private List<String> cells(int number, Batch batch) {
    List<String> cells = new ArrayList<>();
    cells.add(number + (number % RING_EVERY == 1 ? " \u25CB" : ""));
    cells.add(Integer.toString(batch.number()));
    cells.add(Integer.toString(batch.bags()));
    cells.add(JugMark.of(batch.water(), input.request().units()).toPlainString());
    cells.add(batch.clock().map(c -> c.mixStart()).orElse(Minutes.tenth(batch.mixStart())));
    cells.add(batch.clock().map(c -> c.ready()).orElse(Minutes.tenth(batch.ready())));
    cells.add(batch.clock().map(c -> c.placed()).orElse(Minutes.tenth(batch.placed())));
    cells.add(Minutes.tenth(batch.rolled()));
    cells.add(range(batch.firstRibbon(), batch.lastRibbon()));
    cells.add(edge(batch));
    cells.add(EMPTY_BOX);
    return cells;
  }

  private String edge(Batch batch) {
    if (batch.edgeAge().isEmpty()) {
      return "-";
    }
    String kind = kind(batch);
    String age = Minutes.tenth(batch.edgeAge().getAsDouble());
    return kind.equals("holds") ? age : age + (kind.equals("tight") ? " tight" : " late");
  }

  private String kind(Batch batch) {
    double age = batch.edgeAge().orElse(0);
    double healing = plan.mix().healingTime();
    return age > healing ? "breaks" : age > Healing.of(healing).limit() ? "tight" : "holds";
  }

  private String heading(PouredBay bay, List<Batch> batches) {
    List<Ribbon> ribbons = bay.ribbons();
    String room = bay.id().equals(bay.room()) ? "" : " in " + bay.room();
    String lift = bay.pocket() ? ", deep pocket" : bay.lift() > 1 ? ", lift " + bay.lift() : "";
    return "Bay "
        + bay.id()
        + room
        + lift
        + ": ribbons "
        + range(ribbons.get(0).order(), ribbons.get(ribbons.size() - 1).order())
        + ", bags: "
        + batches.stream().mapToInt(Batch::bags).sum();
  }

  private static String range(int first, int last) {
    return first == last ? Integer.toString(first) : first + "\u2013" + last;
  }
}
