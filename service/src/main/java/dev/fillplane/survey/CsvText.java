package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The rows of a text of separated values (RFC 4180). The separator is the one of tab, semicolon and
 * comma that the first line with text has most of; lines end with CR, LF or both; a byte order mark
 * and lines without text are skipped, as many as there may be rows. A row of more than {@link
 * #LONGEST_ROW} signs ends the reading before it fills the memory with cells.
 */
final class CsvText {

  /** Signs of a row at most; a little more may pass, as the text is read by blocks. */
  static final int LONGEST_ROW = 100_000;

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final char separator;
  private final CSVParser parser;
  private final RowReader reader;
  private final Iterator<CSVRecord> records;
  private final Findings findings;

  /** One row: the number of its first line, from 1, and its cells without blanks around them. */
  record Row(int line, List<String> cells) {

    /** The cell {@code index}; empty beyond the end. */
    String cell(int index) {
      return index < cells.size() ? cells.get(index) : "";
    }

    Place place() {
      return Place.root().at("lines").at(line);
    }
  }

  CsvText(String text, Findings findings) {
    this.findings = findings;
    boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
    String bare = marked ? text.substring(1) : text;
    separator = separatorOf(firstLine(bare));
    CSVFormat format =
        CSVFormat.RFC4180.builder().setDelimiter(separator).setIgnoreSurroundingSpaces(true).get();
    reader = new RowReader(bare, LONGEST_ROW);
    try {
      parser = CSVParser.builder().setReader(reader).setFormat(format).get();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    records = parser.iterator();
  }

  private static String firstLine(String text) {
    return text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
  }

  private static char separatorOf(String header) {
    char best = ',';
    long most = 0;
    for (char candidate : new char[] {'\t', ';', ','}) {
      long count = header.chars().filter(c -> c == candidate).count();
      if (count > most) {
        most = count;
        best = candidate;
      }
    }
    return best;
  }

  /** Whether the separator leaves the comma free for decimals. */
  boolean decimalComma() {
    return separator != ',';
  }

  /** The next row with text; empty at the end, and after an error that ends the reading. */
  Optional<Row> next() {
    for (int blank = 0; ; blank++) {
      int line = (int) parser.getCurrentLineNumber() + 1;
      Place there = Place.root().at("lines").at(line);
      if (blank > SurveyCsv.MOST_ROWS) {
        findings.error(
            "csv-too-many", there, "what", "lines without text", "limit", SurveyCsv.MOST_ROWS);
        return Optional.empty();
      }
      reader.startRow();
      try {
        if (!records.hasNext()) {
          return Optional.empty();
        }
        List<String> cells = new ArrayList<>();
        records.next().forEach(cell -> cells.add(cell.strip()));
        if (!cells.stream().allMatch(String::isEmpty)) {
          return Optional.of(new Row(line, cells));
        }
      } catch (UncheckedIOException | IllegalStateException e) {
        if (reader.isRowTooLong()) {
          findings.error("csv-row-endless", there, "limit", LONGEST_ROW);
        } else {
          findings.error("csv-quote", there);
        }
        return Optional.empty();
      }
    }
  }
}
