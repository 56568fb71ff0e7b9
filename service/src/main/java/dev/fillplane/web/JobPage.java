package dev.fillplane.web;

import com.fasterxml.jackson.databind.node.TextNode;
import dev.fillplane.job.UnitRow;
import dev.fillplane.job.UnitState;
import dev.fillplane.web.json.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * Some units of a job with their answers as they were made, byte for byte; shape as in the
 * contract.
 */
record JobPage(List<UnitRow> units, Optional<Cursor> next) {

  /** Writes unit by unit, since a page of plans is large. */
  void write(OutputStream out) throws IOException {
    text(out, "{\"items\":[");
    String between = "";
    for (UnitRow unit : units) {
      text(out, between);
      write(unit, out);
      between = ",";
    }
    text(out, "]");
    if (next.isPresent()) {
      text(out, ",\"nextCursor\":\"" + next.get().text() + "\"");
    }
    text(out, "}");
  }

  private static void write(UnitRow unit, OutputStream out) throws IOException {
    text(
        out,
        "{\"unit\":"
            + unit.unit()
            + ",\"reference\":"
            + TextNode.valueOf(unit.reference())
            + ",\"state\":\""
            + Words.of(unit.state())
            + "\"");
    if (unit.state() != UnitState.WAITING) {
      text(out, unit.state() == UnitState.PLANNED ? ",\"plan\":" : ",\"problem\":");
      out.write(unit.json());
    }
    text(out, "}");
  }

  private static void text(OutputStream out, String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
  }
}
