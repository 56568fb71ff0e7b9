package dev.fillplane.web;

import dev.fillplane.estimate.LineItem;
import dev.fillplane.estimate.LineItems;
import dev.fillplane.estimate.Measure;
import dev.fillplane.quantity.Money;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.render.CellText;
import dev.fillplane.web.json.Sentences;
import dev.fillplane.web.json.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * The lines of an estimate as separated values (RFC 4180): a row of names, then one row a line.
 * Numbers are as in JSON, without signs of units. A text that a spreadsheet would take for a
 * formula is told with an apostrophe before it.
 */
final class LineItemList {

  private static final List<String> NAMES =
      List.of(
          "code",
          "own code",
          "reference",
          "kind",
          "role",
          "description",
          "quantity",
          "waste",
          "reserve",
          "order",
          "unit",
          "unit price",
          "amount",
          "currency",
          "basis");

  private LineItemList() {}

  /** The table of {@code items}; the names alone if there are none. */
  static String of(LineItems items, UnitSystem units) {
    StringBuilder text = new StringBuilder();
    try (CSVPrinter table = new CSVPrinter(text, CSVFormat.RFC4180)) {
      table.printRecord(NAMES);
      for (LineItem line : items.lines()) {
        table.printRecord(row(line, units));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static List<String> row(LineItem line, UnitSystem units) {
    return List.of(
        line.code(),
        CellText.of(line.ownCode().orElse("")),
        line.reference(),
        Words.of(line.kind()),
        line.role().map(Words::of).orElse(""),
        CellText.of(Sentences.of(line.description().code(), line.description().values(), units)),
        number(line.quantity()),
        line.waste().map(LineItemList::number).orElse(""),
        line.reserve().map(LineItemList::number).orElse(""),
        number(line.order()),
        line.order().unit().code(),
        line.unitPrice().map(BigDecimal::toPlainString).orElse(""),
        line.amount().map(money -> money.amount().toPlainString()).orElse(""),
        line.amount().flatMap(Money::currency).orElse(""),
        line.basis());
  }

  private static String number(Measure measure) {
    BigDecimal value = measure.value();
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
