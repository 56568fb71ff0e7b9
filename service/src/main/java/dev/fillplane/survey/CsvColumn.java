package dev.fillplane.survey;

import dev.fillplane.quantity.Dimension;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The columns that a table of readings may have, by their names in its header. */
enum CsvColumn {
  POINT,
  X,
  Y,
  READING,
  ELEVATION,
  SETUP,
  BENCHMARK;

  /** The name in the header and in the places of findings. */
  String title() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What its numbers measure; names measure nothing and have none. */
  Dimension dimension() {
    return switch (this) {
      case X, Y -> Dimension.PLAN;
      case READING, ELEVATION, BENCHMARK -> Dimension.HEIGHT;
      case POINT, SETUP -> throw new IllegalStateException("no number");
    };
  }

  static Optional<CsvColumn> called(String name) {
    String title = name.toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(column -> column.title().equals(title)).findFirst();
  }

  /** All names, for a sentence. */
  static String titles() {
    return Arrays.stream(values()).map(CsvColumn::title).collect(Collectors.joining(", "));
  }
}
