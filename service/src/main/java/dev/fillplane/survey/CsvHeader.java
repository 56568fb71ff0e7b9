package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Which column of a table of readings stands where. */
final class CsvHeader {

  private final CsvText.Row row;
  private final Findings findings;
  private final Map<CsvColumn, Integer> at = new EnumMap<>(CsvColumn.class);
  private final int width;

  private CsvHeader(CsvText.Row row, Findings findings) {
    this.row = row;
    this.findings = findings;
    int last = row.cells().size();
    while (row.cell(last - 1).isEmpty()) {
      last--;
    }
    width = last;
  }

  /** Reads the header; errors where the columns do not make a survey. */
  static CsvHeader read(CsvText.Row row, Findings findings) {
    CsvHeader header = new CsvHeader(row, findings);
    for (int i = 0; i < header.width && findings.size() < SurveyCsv.MOST_ERRORS; i++) {
      header.name(i);
    }
    header.check();
    return header;
  }

  private void name(int index) {
    String told = row.cell(index);
    CsvColumn column = CsvColumn.called(told).orElse(null);
    if (column == null) {
      findings.error(
          "csv-column-unknown",
          row.place().at(CsvCells.shortened(told)),
          "column",
          CsvCells.shortened(told),
          "columns",
          CsvColumn.titles());
    } else if (at.putIfAbsent(column, index) != null) {
      findings.error("csv-column-repeated", row.place().at(column.title()), "column", told);
    }
  }

  private void check() {
    need(CsvColumn.POINT);
    if (has(CsvColumn.READING) == has(CsvColumn.ELEVATION)) {
      findings.error("csv-height-column", row.place());
    } else if (has(CsvColumn.ELEVATION)) {
      need(CsvColumn.X);
      need(CsvColumn.Y);
      for (CsvColumn column : List.of(CsvColumn.SETUP, CsvColumn.BENCHMARK)) {
        if (has(column)) {
          findings.error(
              "csv-column-of-readings", row.place().at(column.title()), "column", column.title());
        }
      }
    } else if (has(CsvColumn.X) != has(CsvColumn.Y)) {
      need(CsvColumn.X);
      need(CsvColumn.Y);
    }
  }

  private void need(CsvColumn column) {
    if (!has(column)) {
      findings.error("csv-column-missing", row.place(), "column", column.title());
    }
  }

  boolean has(CsvColumn column) {
    return at.containsKey(column);
  }

  /** What a row says in {@code column}; empty where the table has no such column. */
  String cell(CsvText.Row from, CsvColumn column) {
    Integer index = at.get(column);
    return index == null ? "" : from.cell(index);
  }

  /** Whether a row has a cell for every column and no text beyond; errors if not. */
  boolean fits(CsvText.Row other) {
    int told = other.cells().size();
    if (told < width) {
      findings.error("csv-row-short", other.place(), "cells", told, "columns", width);
      return false;
    }
    if (other.cells().subList(width, told).stream().anyMatch(cell -> !cell.isEmpty())) {
      findings.error("csv-row-long", other.place(), "cells", told, "columns", width);
      return false;
    }
    return true;
  }
}
