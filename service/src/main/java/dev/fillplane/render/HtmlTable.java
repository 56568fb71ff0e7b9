package dev.fillplane.render;

import java.util.List;

/** Writes a table whose head stands on every page. */
final class HtmlTable {

  private final Markup html;
  private final int columns;

  /** Starts a table. */
  HtmlTable(Markup html, String kind, String caption, List<String> names) {
    this.html = html;
    columns = names.size();
    html.open("table", "class", kind);
    html.text("caption", caption);
    html.open("thead").open("tr");
    names.forEach(name -> html.text("th", name, "scope", "col"));
    html.close("tr").close("thead");
  }

  /** Starts a group of rows under a heading of its own. */
  HtmlTable group(String heading) {
    html.open("tbody").open("tr", "class", "group");
    html.text("th", heading, "colspan", columns, "scope", "rowgroup");
    html.close("tr");
    return this;
  }

  /** Starts rows without a heading. */
  HtmlTable rows() {
    html.open("tbody");
    return this;
  }

  /** A row; its first cell names it. */
  HtmlTable row(String kind, List<String> cells) {
    html.open("tr", "class", kind);
    html.text("th", cells.get(0), "scope", "row");
    cells.subList(1, cells.size()).forEach(cell -> html.text("td", cell));
    html.close("tr");
    return this;
  }

  /** Ends a group of rows. */
  HtmlTable endRows() {
    html.close("tbody");
    return this;
  }

  void end() {
    html.close("table");
  }
}
