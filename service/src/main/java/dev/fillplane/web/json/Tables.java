package dev.fillplane.web.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.POJONode;
import dev.fillplane.quantity.Unit;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.survey.Column;
import dev.fillplane.survey.Table;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A table of readings, whose numbers change units by their column. */
final class Tables {

  private Tables() {}

  static Table table(JsonNode tree, UnitSystem system) {
    List<Column> columns = new ArrayList<>();
    for (JsonNode column : tree.get("columns")) {
      for (Column candidate : Column.values()) {
        if (Words.of(candidate).equals(column.textValue())) {
          columns.add(candidate);
        }
      }
    }
    double[] values = numbers(tree.get("values"));
    Unit[] units =
        columns.stream().map(column -> column.dimension().unit(system)).toArray(Unit[]::new);
    for (int i = 0; i < values.length; i++) {
      values[i] = units[i % units.length].toSi(values[i]);
    }
    return new Table(columns, values);
  }

  private static double[] numbers(JsonNode told) {
    if (told.isPojo()) {
      TableValues values = (TableValues) ((POJONode) told).getPojo();
      double[] numbers = new double[values.count()];
      Arrays.setAll(numbers, values::number);
      return numbers;
    }
    double[] numbers = new double[told.size()];
    Arrays.setAll(numbers, i -> told.get(i).doubleValue());
    return numbers;
  }
}
