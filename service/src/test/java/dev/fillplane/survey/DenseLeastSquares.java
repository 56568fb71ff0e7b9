package dev.fillplane.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/** The slow way: one dense row a reading, one column an unknown, orthogonal decomposition. */
final class DenseLeastSquares {

  private record Row(Setup setup, Reading reading) {}

  private final Survey survey;
  private final List<Row> rows = new ArrayList<>();
  private final Map<String, Integer> columns = new LinkedHashMap<>();
  private final Map<String, Double> held = new LinkedHashMap<>();
  private final RealVector solution;
  private final RealMatrix covariance;
  private final RealMatrix design;

  DenseLeastSquares(Survey survey) {
    this(survey, null);
  }

  private DenseLeastSquares(Survey survey, Reading without) {
    this.survey = survey;
    survey.benchmarks().forEach(b -> held.put("point " + b.point(), b.elevation()));
    if (held.isEmpty()) {
      held.put("setup " + survey.setups().get(0).id(), 0.0);
    }
    for (Setup setup : survey.setups()) {
      for (Reading reading : setup.readings()) {
        if (reading != without) {
          rows.add(new Row(setup, reading));
          number("setup " + setup.id());
          number("point " + reading.point());
        }
      }
    }
    survey.setups().stream().filter(this::tilts).forEach(this::numberTilts);
    int beforehand = columns.size();
    design = new Array2DRowRealMatrix(rows.size() + beforehand, columns.size());
    RealVector right = new ArrayRealVector(rows.size() + beforehand);
    for (int i = 0; i < rows.size(); i++) {
      double weight = 1 / error(rows.get(i));
      double told = rows.get(i).reading().reading();
      told -= enter(i, "setup " + rows.get(i).setup().id(), weight);
      told -= enter(i, "point " + rows.get(i).reading().point(), -weight);
      enterTilts(i, weight);
      right.setEntry(i, told * weight);
    }
    for (String name : columns.keySet()) {
      if (name.startsWith("tilt")) {
        design.setEntry(rows.size() + columns.get(name), columns.get(name), 1 / survey.laserTilt());
      }
    }
    solution = new QRDecomposition(design).getSolver().solve(right);
    RealMatrix normal = design.transpose().multiply(design);
    covariance = new QRDecomposition(normal).getSolver().getInverse();
  }

  private void number(String name) {
    if (!held.containsKey(name)) {
      columns.putIfAbsent(name, columns.size());
    }
  }

  private boolean tilts(Setup setup) {
    return survey.laserTilt() > 0
        && setup.readings().stream().mapToDouble(r -> Math.abs(east(setup, r))).max().orElse(0) > 0;
  }

  private void numberTilts(Setup setup) {
    number("tilt x " + setup.id());
    number("tilt y " + setup.id());
  }

  private void enterTilts(int row, double weight) {
    Setup setup = rows.get(row).setup();
    if (tilts(setup)) {
      enter(row, "tilt x " + setup.id(), weight * east(setup, rows.get(row).reading()));
      enter(row, "tilt y " + setup.id(), weight * north(setup, rows.get(row).reading()));
    }
  }

  private static double east(Setup setup, Reading reading) {
    double centre =
        setup.readings().stream().mapToDouble(r -> r.x().getAsDouble()).average().getAsDouble();
    return reading.x().getAsDouble() - setup.x().orElse(centre);
  }

  private static double north(Setup setup, Reading reading) {
    double centre =
        setup.readings().stream().mapToDouble(r -> r.y().getAsDouble()).average().getAsDouble();
    return reading.y().getAsDouble() - setup.y().orElse(centre);
  }

  /** How the plane rises along x or y; 0 where it is taken as level. */
  double tilt(String axis, String setup) {
    Integer column = columns.get("tilt " + axis + " " + setup);
    return column == null ? 0 : solution.getEntry(column);
  }

  /** Enters an unknown into a row; what is held comes back with its sign instead. */
  private double enter(int row, String name, double weight) {
    if (held.containsKey(name)) {
      return held.get(name) * Math.signum(weight);
    }
    design.setEntry(row, columns.get(name), weight);
    return 0;
  }

  private double error(Row row) {
    return row.setup().error().orElse(survey.readingError());
  }

  private double value(String name) {
    return held.containsKey(name) ? held.get(name) : solution.getEntry(columns.get(name));
  }

  double plane(String setup) {
    return value("setup " + setup);
  }

  double elevation(String point) {
    return value("point " + point);
  }

  double deviation(String point) {
    Integer column = columns.get("point " + point);
    return column == null ? 0 : Math.sqrt(covariance.getEntry(column, column));
  }

  /** The largest residual of a point without its sign. */
  double residual(String point) {
    return rows.stream()
        .filter(row -> row.reading().point().equals(point))
        .mapToDouble(row -> Math.abs(residual(row)))
        .max()
        .orElseThrow();
  }

  private double residual(Row row) {
    String point = row.reading().point();
    double rise = 0;
    if (tilts(row.setup())) {
      rise += tilt("x", row.setup().id()) * east(row.setup(), row.reading());
      rise += tilt("y", row.setup().id()) * north(row.setup(), row.reading());
    }
    return plane(row.setup().id()) + rise - row.reading().reading() - elevation(point);
  }

  /** The largest standardized residual of a point, over readings that others check. */
  double standardized(String point) {
    double worst = 0;
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).reading().point().equals(point)) {
        worst = Math.max(worst, standardized(i));
      }
    }
    return worst;
  }

  private double standardized(int i) {
    RealVector row = design.getRowVector(i);
    double redundancy = 1 - row.dotProduct(covariance.operate(row));
    return redundancy < 1e-6
        ? 0
        : Math.abs(residual(rows.get(i))) / (error(rows.get(i)) * Math.sqrt(redundancy));
  }

  /** The elevations that are found for a point when its equally worst readings are left out. */
  List<Double> elevationsWithoutWorst(String point) {
    List<Double> found = new ArrayList<>();
    double worst = standardized(point);
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).reading().point().equals(point) && standardized(i) > worst - 1e-6) {
        found.add(new DenseLeastSquares(survey, rows.get(i).reading()).elevation(point));
      }
    }
    return found;
  }
}
