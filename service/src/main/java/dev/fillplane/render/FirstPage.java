package dev.fillplane.render;

import dev.fillplane.heat.Conditions;
import dev.fillplane.plan.Plan;
import dev.fillplane.pour.PouredBay;
import dev.fillplane.pour.Ribbon;
import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Room;
import dev.fillplane.safety.Note;
import dev.fillplane.safety.Severity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** What the unit is, whether the pour holds, the five numbers that matter, and the map. */
final class FirstPage {

  /** Size of the numbers and the width that there is for them, pt. */
  private static final double LARGE = 22;

  private static final double CELL = 94;
  private static final double POINTS_IN_MM = 72 / 25.4;

  /** Water so much off what suits the sheet is worth a word, K. */
  private static final double OFF = 1;

  private final PageInput input;
  private final Plan plan;
  private final Figures figures;
  private final Markup html = new Markup();

  private FirstPage(PageInput input) {
    this.input = input;
    plan = input.plan();
    figures = input.figures();
  }

  static Markup write(PageInput input) {
    FirstPage page = new FirstPage(input);
    page.titleBlock();
    page.verdict();
    page.numbers();
    page.map();
    return page.html;
  }

  /** Whether the paper is turned for it. */
  static boolean isTurned(PageInput input) {
    return frame(input).isTurned();
  }

  private static Frame frame(PageInput input) {
    return Frame.page(Layout.extent(input.request().rooms()), input.paper());
  }

  private void titleBlock() {
    html.open("header", "class", "title");
    html.text("p", "Pour sheet", "class", "kind");
    html.text("h1", input.name(), "class", size(input.name()));
    String deepest = input.heights().full(Math.max(0, plan.depth().deepest().depth()));
    html.text(
        "p",
        "Target "
            + TitleBlock.target(plan.target(), input.heights())
            + ". Fill "
            + input.heights().volume(plan.depth().volume())
            + " over "
            + figures.area(plan.depth().pouredArea())
            + ", up to "
            + deepest
            + " deep.");
    html.close("header");
  }

  /** A long name takes smaller letters, or it would push the map to the next page. */
  private String size(String name) {
    double lines = Lettering.width(name, LARGE) / (POINTS_IN_MM * input.paper().across());
    return lines > 2 ? "longest" : lines > 1 ? "long" : "short";
  }

  private void verdict() {
    String word =
        !input.isPoured()
            ? "Nothing to pour."
            : switch (plan.pour().verdict()) {
              case HOLDS -> "The wet edge holds.";
              case TIGHT -> "Tight: no time to spare at the wet edge.";
              case BREAKS -> "Do not pour like this: a wet edge is lost.";
            };
    String kind = input.isPoured() ? OrderPage.word(plan.pour().verdict()) : "nothing";
    html.open("p", "class", "verdict " + kind);
    html.text("strong", word);
    plan.pour().changes().stream()
        .limit(1)
        .forEach(change -> html.text("span", " Better: " + input.text(change.remark())));
    stops();
    html.close("p");
  }

  /** The verdict is about the wet edge; what forbids the work for another reason stands beside. */
  private void stops() {
    long stops = plan.safety().stream().filter(FirstPage::stops).count();
    if (stops > 0) {
      html.text("strong", " Read Safety first. Notes that stop the work: " + stops + ".");
    }
  }

  private static boolean stops(Note note) {
    return note.severity() == Severity.DANGER || note.code().startsWith("do-not-pour");
  }

  private void numbers() {
    html.open("div", "class", "five", "role", "list");
    bags();
    water();
    time();
    people();
    start();
    html.close("div");
  }

  private void bags() {
    String more =
        "likely "
            + plan.quantities().bags().likely()
            + "; "
            + figures.mass(plan.quantities().mass())
            + " in all";
    number("Bags to buy", Integer.toString(plan.quantities().bags().order()), more);
  }

  private void water() {
    Conditions told = input.request().conditions().orElseGet(Conditions::unknown);
    double temperature = told.site().water();
    OptionalDouble needed = plan.mix().needed().waterTemperature();
    String better =
        needed.isPresent() && Math.abs(needed.getAsDouble() - temperature) >= OFF
            ? "better " + figures.temperature(needed.getAsDouble())
            : "as the data sheet wants it";
    number(
        "Water per batch",
        figures.water(plan.mix().waterPerBatch()),
        "at "
            + figures.temperature(temperature)
            + (needed.isPresent() ? ", " + better : ", see the warnings"));
  }

  private void time() {
    number(
        "Working time",
        Minutes.whole(plan.mix().workingTime()),
        "an edge closes for " + Minutes.whole(plan.mix().healingTime()));
  }

  private void people() {
    OptionalInt needed = plan.pour().crew().needed();
    int people = plan.pour().crew().people();
    int mixers = plan.pour().crew().mixers();
    String with = mixers == 1 ? "with 1 mixer" : "with " + mixers + " mixers";
    String more =
        needed.isPresent() && needed.getAsInt() > people
            ? with + "; it takes " + needed.getAsInt()
            : with;
    number("People", Integer.toString(people), more);
  }

  private void start() {
    Optional<PouredBay> first =
        plan.pour().bays().stream().filter(bay -> !bay.ribbons().isEmpty()).findFirst();
    if (first.isEmpty() || !input.isPoured()) {
      number("Start", "-", "nothing to pour");
      return;
    }
    Ribbon ribbon = first.get().ribbons().get(0);
    Room room =
        input.request().rooms().stream()
            .filter(r -> r.id().equals(first.get().room()))
            .findFirst()
            .orElseThrow();
    String where = Corner.of(room.outline(), ribbon.outline()) + " on the map" + wayOut();
    number("Start in", Lettering.cut(room.id(), 24), where);
  }

  private String wayOut() {
    List<String> exits =
        input.request().rooms().stream()
            .flatMap(room -> room.openings().stream())
            .filter(opening -> opening.kind() == OpeningKind.EXIT)
            .map(Opening::id)
            .toList();
    return exits.isEmpty() ? "" : "; leave by " + Lettering.cut(exits.get(0), 24);
  }

  private void number(String name, String value, String more) {
    html.open("div", "role", "listitem");
    html.text("span", name, "class", "name");
    html.text("strong", value, "class", Lettering.width(value, LARGE) > CELL ? "long" : "short");
    html.text("span", more, "class", "more");
    html.close("div");
  }

  private void map() {
    html.open("div", "class", "picture");
    Paper paper = input.paper();
    Frame frame = frame(input);
    double across = frame.isTurned() ? paper.turnedAcross() : paper.across();
    double down = (frame.isTurned() ? paper.turnedDown() : paper.down()) - Frame.ABOVE;
    html.add(DepthMap.onPage(input.request(), plan, frame, across, down));
    html.close("div");
  }
}
