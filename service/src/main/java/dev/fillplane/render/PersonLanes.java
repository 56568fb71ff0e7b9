package dev.fillplane.render;

import dev.fillplane.pour.Batch;
import dev.fillplane.pour.Pour;
import dev.fillplane.pour.Task;
import dev.fillplane.pour.Worker;
import java.util.List;

/** A lane for the bays and one for each person who works, with what they do for which batch. */
final class PersonLanes {

  private static final double LANE = 24;
  private static final double BAR = 19;
  private static final double TEXT = 11;

  private final Pour pour;
  private final Stretch stretch;
  private final String ids;
  private final Markup svg = new Markup();

  PersonLanes(Pour pour, Stretch stretch, String ids) {
    this.pour = pour;
    this.stretch = stretch;
    this.ids = ids;
  }

  static List<Worker> atWork(Pour pour) {
    return pour.workers().stream().filter(worker -> !worker.tasks().isEmpty()).toList();
  }

  static double height(Pour pour) {
    return LANE * (1 + atWork(pour).size());
  }

  Markup draw(double top) {
    bays(top);
    double at = top + LANE;
    for (Worker worker : atWork(pour)) {
      name("Person " + worker.number(), at);
      for (Task task : worker.tasks()) {
        if (stretch.shows(task.from(), task.to())) {
          task(task, at);
        }
      }
      at += LANE;
    }
    return svg;
  }

  private void name(String text, double top) {
    svg.text("text", text, "x", 2, "y", top + 14, "font-size", 12, "font-weight", "bold");
  }

  private void bays(double top) {
    name("Bay", top);
    List<Batch> batches = pour.batches();
    int first = 0;
    for (int i = 1; i <= batches.size(); i++) {
      if (i == batches.size() || !batches.get(i).bay().equals(batches.get(first).bay())) {
        double end = batches.get(i - 1).placed();
        double next = i == batches.size() ? end : batches.get(i).mixStart();
        bay(batches.get(first), Math.min(end, next), top);
        first = i;
      }
    }
  }

  /** A bay lasts until the bags of the next one are opened. */
  private void bay(Batch first, double end, double top) {
    if (!stretch.shows(first.mixStart(), end)) {
      return;
    }
    double x = stretch.x(first.mixStart());
    double width = stretch.x(end) - x;
    svg.leaf(
        "path",
        "d",
        "M" + Markup.number(x) + " " + Markup.number(top + 17) + "h" + Markup.number(width),
        "stroke",
        "#111",
        "stroke-width",
        3,
        "fill",
        "none");
    String text = Lettering.fit(first.bay(), 12, width - 4);
    svg.text("text", text, "x", x + 2, "y", top + 12, "font-size", 12);
  }

  private void task(Task task, double top) {
    TaskLook look = TaskLook.of(task.role());
    double x = stretch.x(task.from());
    double width = Math.max(0.6, stretch.x(task.to()) - x);
    svg.leaf(
        "rect",
        "class",
        "task",
        "x",
        x,
        "y",
        top,
        "width",
        width,
        "height",
        BAR,
        "fill",
        look.fill(ids),
        "stroke",
        "#111",
        "stroke-width",
        0.7);
    label(task, look, x + width / 2, top, width);
  }

  /** The word and the batch, the batch alone where that is all that fits, or nothing. */
  private void label(Task task, TaskLook look, double middle, double top, double width) {
    String number = task.batch().isPresent() ? Integer.toString(task.batch().getAsInt()) : "";
    String text = (look.word() + " " + number).strip();
    if (Lettering.width(text, TEXT) > width - 4) {
      text = number;
    }
    double needed = Lettering.width(text, TEXT);
    if (text.isEmpty() || needed > width - 2) {
      return;
    }
    if (look.isHatched()) {
      svg.leaf(
          "rect",
          "x",
          middle - needed / 2,
          "y",
          top + 3,
          "width",
          needed,
          "height",
          BAR - 6,
          "fill",
          "#fff");
    }
    svg.text(
        "text",
        text,
        "x",
        middle,
        "y",
        top + 13.5,
        "font-size",
        TEXT,
        "text-anchor",
        "middle",
        "fill",
        look.ink());
  }
}
