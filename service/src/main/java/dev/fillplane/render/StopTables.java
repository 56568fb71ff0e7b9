package dev.fillplane.render;

import dev.fillplane.bay.Joint;
import dev.fillplane.supply.Dam;
import java.util.List;

/** Boards that hold the pour: across openings, and at planned joints. */
final class StopTables {

  private StopTables() {}

  static Markup dams(PageInput input) {
    Markup html = new Markup();
    List<Dam> dams = input.plan().quantities().dams();
    if (dams.isEmpty()) {
      return html.text("p", "No dams across openings in this pour.", "class", "none");
    }
    HtmlTable table =
        new HtmlTable(
            html,
            "dams",
            "Dams: boards across openings, sealed at floor and sides",
            List.of("Opening", "Room", "Length", "Height", "Set"));
    table.rows();
    for (Dam dam : dams) {
      table.row(
          "dam",
          List.of(
              dam.opening(),
              dam.room(),
              input.figures().length(dam.length()),
              input.heights().full(dam.height()),
              OrderPage.EMPTY_BOX));
    }
    table.endRows().end();
    return html;
  }

  static Markup joints(PageInput input) {
    Markup html = new Markup();
    List<Joint> joints = input.plan().pour().joints();
    if (joints.isEmpty()) {
      return html;
    }
    HtmlTable table =
        new HtmlTable(
            html,
            "joints",
            "Joints: a stop at the edge of the bay that is poured first",
            List.of("Bay", "Why", "From", "To", "Height", "Set"));
    table.rows();
    for (Joint joint : joints) {
      table.row(
          "joint",
          List.of(
              joint.bay(),
              why(joint),
              input.figures().place(joint.from()),
              input.figures().place(joint.to()),
              input.heights().full(joint.height()),
              OrderPage.EMPTY_BOX));
    }
    table.endRows().end();
    return html;
  }

  private static String why(Joint joint) {
    String kind =
        switch (joint.kind()) {
          case DOORWAY -> "doorway";
          case MOVING_JOINT -> "moving joint, carried through";
          case DAM -> "too much for one go";
        };
    return joint.opening().map(opening -> kind + " " + opening).orElse(kind);
  }
}
