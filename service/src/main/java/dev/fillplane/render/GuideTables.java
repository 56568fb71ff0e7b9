package dev.fillplane.render;

import dev.fillplane.room.Floorplan;
import dev.fillplane.room.Position;
import dev.fillplane.screed.Pin;
import dev.fillplane.screed.Rail;
import dev.fillplane.screed.RailSupport;
import dev.fillplane.screed.Station;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** Depth pins and screed rails with their heights. */
final class GuideTables {

  private static final String NOWHERE = "outside the rooms";

  private final PageInput input;
  private final Figures figures;
  private final Markup html = new Markup();

  private GuideTables(PageInput input) {
    this.input = input;
    figures = input.figures();
  }

  static Markup pins(PageInput input) {
    GuideTables tables = new GuideTables(input);
    tables.pins();
    return tables.html;
  }

  static Markup rails(PageInput input) {
    GuideTables tables = new GuideTables(input);
    tables.rails();
    return tables.html;
  }

  private void pins() {
    if (input.plan().pins().isEmpty()) {
      html.text("p", "No depth pins in this pour.", "class", "none");
      return;
    }
    HtmlTable table =
        new HtmlTable(
            html,
            "pins",
            "Depth pins: the tip stands at the finished height",
            List.of("Pin", "Right / up", "Height", "Set"));
    List<Pin> pins = input.plan().pins();
    for (Map.Entry<String, List<Integer>> room : pinsByRoom().entrySet()) {
      table.group(room.getKey());
      for (int place : room.getValue()) {
        Pin pin = pins.get(place);
        table.row(
            "pin",
            List.of(
                "P" + (place + 1),
                figures.place(new Position(pin.x(), pin.y())),
                input.heights().full(pin.height()),
                OrderPage.EMPTY_BOX));
      }
      table.endRows();
    }
    table.end();
  }

  /** Their places in the plan. */
  private Map<String, List<Integer>> pinsByRoom() {
    Floorplan plan = new Floorplan(input.request().rooms());
    Map<String, List<Integer>> rooms = new LinkedHashMap<>();
    for (int i = 0; i < input.plan().pins().size(); i++) {
      Pin pin = input.plan().pins().get(i);
      OptionalInt room = plan.roomAt(pin.x(), pin.y());
      String id = room.isPresent() ? input.request().rooms().get(room.getAsInt()).id() : NOWHERE;
      rooms.computeIfAbsent(id, r -> new ArrayList<>()).add(i);
    }
    return rooms;
  }

  private void rails() {
    if (input.plan().rails().isEmpty()) {
      html.text("p", "No screed rails in this pour.", "class", "none");
      return;
    }
    HtmlTable table =
        new HtmlTable(
            html,
            "rails",
            "Screed rails: top above the floor, every so far along the rail",
            List.of("Along", "Height", "Pack under", "Set"));
    for (Rail rail : input.plan().rails()) {
      table.group(heading(rail));
      for (Station station : rail.stations()) {
        table.row(
            "station",
            List.of(
                figures.length(station.at()),
                input.heights().full(station.height()),
                rail.support() == RailSupport.EDGE ? "-" : input.heights().full(station.shim()),
                OrderPage.EMPTY_BOX));
      }
      table.endRows();
    }
    table.end();
  }

  private String heading(Rail rail) {
    String what =
        switch (rail.support()) {
          case WALL -> "along a wall";
          case EDGE -> "the finished edge of an earlier bay";
          case FREE -> "free";
        };
    String strip =
        rail.support() == RailSupport.EDGE
            ? ""
            : "; rip to " + input.heights().full(rail.ripWidth());
    String out = rail.out().isPresent() ? "; comes out as number " + rail.out().getAsInt() : "";
    return "Rail R"
        + rail.id()
        + " in bay "
        + rail.bay()
        + ", "
        + what
        + ": from "
        + figures.place(rail.from())
        + " to "
        + figures.place(rail.to())
        + strip
        + out;
  }
}
