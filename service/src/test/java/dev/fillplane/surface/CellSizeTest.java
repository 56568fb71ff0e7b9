package dev.fillplane.surface;

import static dev.fillplane.surface.TestFloors.RECTANGLE;
import static dev.fillplane.surface.TestFloors.room;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.room.Room;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CellSizeTest {

  private static final Place GRID = Place.root().at("grid");

  private final Findings findings = new Findings();

  private double choose(OptionalDouble wish, Room... rooms) {
    return CellSize.choose(List.of(rooms), wish, GRID, findings);
  }

  @Test
  void smallRoomsGetATenthOfAMetre() {
    assertEquals(0.1, choose(OptionalDouble.empty(), room("r", RECTANGLE)));
  }

  @Test
  void largeRoomsGetTwentyThousandCells() {
    double[] hall = {0, 0, 50, 0, 50, 40, 0, 40};
    assertEquals(Math.sqrt(0.1), choose(OptionalDouble.empty(), room("hall", hall)), 1e-12);
  }

  @Test
  void roomsFarApartGetLargerCells() {
    double[] far = {300, 200, 301, 200, 301, 201, 300, 201};
    double cell = choose(OptionalDouble.empty(), room("r", RECTANGLE), room("far", far));
    double cells = Math.ceil(301 / cell) * Math.ceil(201 / cell);
    assertTrue(cells <= 250_000 && cells > 245_000, cell + " m: " + cells);
    assertFalse(findings.hasErrors());
  }

  @Test
  void wishIsKept() {
    assertEquals(0.02, choose(OptionalDouble.of(0.02), room("r", RECTANGLE)));
  }

  @Test
  void wishThatIsTooFineIsAnError() {
    choose(OptionalDouble.of(0.009), room("r", RECTANGLE));
    assertEquals("grid-too-fine", findings.errors().get(0).code());
    assertEquals("#/grid/cell", findings.errors().get(0).place().toString());
  }
}
