package org.example.estimates;

import static java.nio.file.StandardOpenOption.APPEND;
import static java.nio.file.StandardOpenOption.CREATE;

import dev.fillplane.client.host.Estimate;
import dev.fillplane.client.host.EstimateSink;
import dev.fillplane.client.host.LineItem;
import dev.fillplane.client.host.Trouble;
import dev.fillplane.client.host.Unit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;

/** Appends line items to a table; what goes wrong is printed. */
final class TableSink implements EstimateSink {
  private final Path table;

  TableSink(Path table) {
    this.table = table;
  }

  @Override
  public void add(Unit unit, Estimate estimate) {
    StringBuilder rows = new StringBuilder();
    for (LineItem line : estimate.lines()) {
      rows.append(unit.reference()).append(',').append(line.ownCode().orElse(line.code()));
      rows.append(',').append(line.order().value()).append(',').append(line.order().unit());
      rows.append(',').append(line.amount().map(BigDecimal::toPlainString).orElse("")).append('\n');
    }
    append(rows.toString());
    String total = estimate.total().map(BigDecimal::toPlainString).orElse("no prices");
    System.out.println(unit.reference() + ": " + total + ", the wet edge " + estimate.verdict());
  }

  @Override
  public void refuse(Unit unit, Trouble trouble) {
    System.out.println(unit.reference() + ": refused, " + trouble.kind());
    trouble.faults().forEach(fault -> System.out.println("  " + fault.detail()));
  }

  private void append(String rows) {
    try {
      Files.writeString(table, rows, CREATE, APPEND);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
