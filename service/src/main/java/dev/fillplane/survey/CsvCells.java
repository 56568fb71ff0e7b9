package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.UnitSystem;
import java.util.OptionalDouble;

/** Reads the cells of rows to names and numbers; what cannot be read becomes an error there. */
final class CsvCells {

  /** Most signs of a name, as in a request. */
  static final int NAME_LENGTH = 80;

  private final CsvHeader header;
  private final CsvNumber numbers;
  private final Findings findings;

  CsvCells(CsvHeader header, CsvText text, UnitSystem units, Findings findings) {
    this.header = header;
    this.numbers = new CsvNumber(units, text.decimalComma());
    this.findings = findings;
  }

  /** The name in {@code column}. */
  String name(CsvText.Row row, CsvColumn column) {
    String told = header.cell(row, column);
    Place there = row.place().at(column.title());
    if (told.isEmpty()) {
      findings.error("csv-cell-empty", there, "column", column.title());
    } else if (told.codePointCount(0, told.length()) > NAME_LENGTH
        || told.chars().anyMatch(Character::isISOControl)) {
      findings.error("csv-name", there, "length", NAME_LENGTH);
    }
    return told;
  }

  /** The number in {@code column}; NaN after an error. */
  double number(CsvText.Row row, CsvColumn column) {
    if (header.cell(row, column).isEmpty()) {
      findings.error("csv-cell-empty", row.place().at(column.title()), "column", column.title());
      return Double.NaN;
    }
    return numberIfTold(row, column).orElse(Double.NaN);
  }

  /** The number in {@code column}; empty for an empty cell and after an error. */
  OptionalDouble numberIfTold(CsvText.Row row, CsvColumn column) {
    String told = header.cell(row, column);
    if (told.isEmpty()) {
      return OptionalDouble.empty();
    }
    OptionalDouble number = numbers.parse(told, column.dimension());
    if (number.isEmpty()) {
      String code =
          numbers.isFractionElsewhere(told, column.dimension()) ? "csv-fraction" : "csv-number";
      findings.error(code, row.place().at(column.title()), "text", shortened(told));
    }
    return number;
  }

  /** The start of what is told, for a finding. */
  static String shortened(String told) {
    String plain = told.replaceAll("\\p{Cntrl}", " ");
    return plain.length() <= 40 ? plain : plain.substring(0, 40) + " ...";
  }
}
