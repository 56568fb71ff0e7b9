package dev.fillplane.bench;

import dev.fillplane.plan.PlanRequest;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.room.Room;
import dev.fillplane.surface.SurfaceWish;
import dev.fillplane.surface.TestFloors;
import dev.fillplane.survey.Column;
import dev.fillplane.survey.Reading;
import dev.fillplane.survey.Setup;
import dev.fillplane.survey.Survey;
import dev.fillplane.survey.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.locationtech.jts.geom.Polygon;

/** An invented rectangular floor with bumps of millimetres, read at random places. */
final class InventedFloor {

  private static final double READING_ERROR = 0.001;

  private final double width;
  private final double length;
  private final double[] x;
  private final double[] y;
  private final double[] reading;

  InventedFloor(double width, double length, int readings) {
    this.width = width;
    this.length = length;
    Random random = new Random(readings);
    x = random.doubles(readings, 0, width).toArray();
    y = random.doubles(readings, 0, length).toArray();
    reading = new double[readings];
    for (int i = 0; i < readings; i++) {
      double bumps = 0.006 * Math.sin(x[i] / 2.3) * Math.cos(y[i] / 1.7) + 0.001 * x[i];
      reading[i] = 1.2 - bumps + READING_ERROR * random.nextGaussian();
    }
  }

  Room room() {
    return TestFloors.room("hall", new double[] {0, 0, width, 0, width, length, 0, length});
  }

  List<Polygon> polygons() {
    return List.of(room().outline().polygon());
  }

  double[] x() {
    return x;
  }

  double[] reading() {
    return reading;
  }

  double[] y() {
    return y;
  }

  /** As one setup with named points. */
  Survey setup() {
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      readings.add(
          new Reading(
              String.valueOf(i + 1), OptionalDouble.of(x[i]), OptionalDouble.of(y[i]), reading[i]));
    }
    OptionalDouble none = OptionalDouble.empty();
    return survey(List.of(new Setup("A", readings, none, none, none)), Optional.empty());
  }

  /** As a table whose heights are readings or elevations. */
  Survey table(Column height) {
    double[] values = new double[3 * x.length];
    for (int i = 0; i < x.length; i++) {
      values[3 * i] = x[i];
      values[3 * i + 1] = y[i];
      values[3 * i + 2] = height == Column.READING ? reading[i] : -reading[i];
    }
    Table table = new Table(List.of(Column.X, Column.Y, height), values);
    return survey(List.of(), Optional.of(table));
  }

  private static Survey survey(List<Setup> setups, Optional<Table> table) {
    OptionalDouble none = OptionalDouble.empty();
    return new Survey(setups, null, null, table, null, null, none, none, null);
  }

  PlanRequest request(Survey survey) {
    return PlanRequest.of(UnitSystem.METRIC, List.of(room()), survey, SurfaceWish.usual());
  }
}
