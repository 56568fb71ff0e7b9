package dev.fillplane.render;

import dev.fillplane.finding.Finding;
import dev.fillplane.plan.Plan;
import dev.fillplane.pour.Mishap;
import dev.fillplane.pour.StopPlace;
import dev.fillplane.pour.Trouble;
import dev.fillplane.safety.Note;
import dev.fillplane.safety.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What can hurt somebody, the gravest first, what to do when it goes wrong, what was assumed. */
final class CarePage {

  private static final double MINUTE = 60;

  /** So many warnings of one kind are told. */
  private static final int MOST_ALIKE = 3;

  private final PageInput input;
  private final Plan plan;
  private final Markup html = new Markup();

  private CarePage(PageInput input) {
    this.input = input;
    plan = input.plan();
  }

  static Markup write(PageInput input) {
    CarePage page = new CarePage(input);
    page.html.text("h2", "Safety");
    for (Severity severity : Severity.values()) {
      page.notes(severity);
    }
    page.html.text(
        "p",
        "These notes come from what was told. They are not all that can go wrong: local code,"
            + " the safety data sheet and licensed practice decide.");
    page.troubles();
    page.warnings();
    return page.html;
  }

  private void notes(Severity severity) {
    List<Note> notes = plan.safety().stream().filter(note -> note.severity() == severity).toList();
    for (Note note : notes) {
      html.open("div", "class", "note " + severity.name().toLowerCase(Locale.ROOT));
      html.open("p");
      html.text("strong", severity.name(), "class", "signal");
      html.text("span", " " + input.wording().sentence(note.code(), note.values()));
      html.close("p");
      html.text("p", note.basis(), "class", "basis");
      html.close("div");
    }
  }

  private void troubles() {
    if (plan.troubles().cases().isEmpty()) {
      return;
    }
    html.text("h2", "When something goes wrong", "class", "wrong");
    html.text("p", standstill());
    stops();
    for (Trouble trouble : plan.troubles().cases()) {
      html.open("div", "class", "trouble");
      html.text("h3", name(trouble.code()) + " (bags at stake: " + trouble.bags() + ")");
      html.open("p").text("strong", "Now: ");
      html.text("span", input.text(trouble.now())).close("p");
      html.open("p").text("strong", "Next day: ");
      html.text("span", input.text(trouble.nextDay())).close("p");
      html.close("div");
    }
  }

  private String standstill() {
    double standstill = plan.troubles().standstill();
    return standstill < MINUTE
        ? "No edge can wait: mixing must not stand still."
        : "Mixing may stand still for "
            + Minutes.whole(standstill)
            + ", once, and every edge still closes.";
  }

  private void stops() {
    if (plan.troubles().stops().isEmpty()) {
      return;
    }
    HtmlTable table =
        new HtmlTable(
            html,
            "stops",
            "Where to end early, if you must: at full depth, never run out thin",
            List.of("End of bay", "Ribbon", "At min", "Bags used", "Bags left"));
    table.rows();
    for (StopPlace stop : plan.troubles().stops()) {
      table.row(
          "stop",
          List.of(
              stop.bay(),
              Integer.toString(stop.ribbon()),
              Minutes.tenth(stop.placed()),
              Integer.toString(stop.bagsUsed()),
              Integer.toString(stop.bagsLeft())));
    }
    table.endRows().end();
  }

  private static String name(Mishap mishap) {
    return switch (mishap) {
      case DRILL_DIES -> "A drill dies";
      case PUMP_STOPS -> "The pump stops";
      case POWER_OFF -> "The power goes off";
      case LEAK -> "It leaks";
      case CLUMP -> "Lumps come up in a batch";
      case BAGS_SHORT -> "Bags run short";
      case EDGE_LOST -> "An edge is lost, or it sets early";
    };
  }

  private void warnings() {
    if (plan.warnings().isEmpty()) {
      return;
    }
    html.text("h2", "What this plan assumed or warns of", "class", "assumed");
    html.open("ul", "class", "warnings");
    warningsByCode().values().forEach(this::warnings);
    html.close("ul");
  }

  private Map<String, List<Finding>> warningsByCode() {
    Map<String, List<Finding>> warnings = new LinkedHashMap<>();
    for (Finding warning : plan.warnings()) {
      warnings.computeIfAbsent(warning.code(), code -> new ArrayList<>()).add(warning);
    }
    return warnings;
  }

  /** The first of a kind; the same said of thirty rooms would hide what else is there. */
  private void warnings(List<Finding> alike) {
    for (Finding warning : alike.subList(0, Math.min(MOST_ALIKE, alike.size()))) {
      html.text("li", input.wording().sentence(warning.code(), warning.values()));
    }
    if (alike.size() > MOST_ALIKE) {
      int more = alike.size() - MOST_ALIKE;
      html.text(
          "li", "Warnings like the last one: " + more + " more; the plan (JSON) has them all.");
    }
  }
}
