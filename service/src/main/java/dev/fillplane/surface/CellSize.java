package dev.fillplane.surface;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.Room;
import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/** How large the cells are on which the floor is sampled. */
public final class CellSize {

  /** Cells that the box of the rooms may have. */
  public static final int MOST_CELLS = 250_000;

  /** Smallest side that is chosen unasked. */
  public static final double SMALLEST_DEFAULT = 0.1;

  /** Cells that the rooms have about, where the default is larger than its least. */
  private static final double USUAL_CELLS = 20_000;

  private CellSize() {}

  /**
   * The side of a cell: as wished, or {@code max(0.1 m, sqrt(area / 20000))}, larger where the box
   * of the rooms would have more than {@link #MOST_CELLS}. A wish that breaks this limit is an
   * error at {@code cell} of the place, and the default is answered.
   *
   * @param rooms at least one
   * @param wish positive
   * @param place of the wish for the grid
   */
  public static double choose(
      List<Room> rooms, OptionalDouble wish, Place place, Findings findings) {
    Envelope box = new Envelope();
    double area = 0;
    for (Room room : rooms) {
      Polygon polygon = room.outline().polygon();
      box.expandToInclude(polygon.getEnvelopeInternal());
      area += polygon.getArea();
    }
    double smallest = smallest(box);
    if (wish.isPresent() && cells(box, wish.getAsDouble()) > MOST_CELLS) {
      Amount finest = Amount.of(smallest, Dimension.PLAN);
      findings.error("grid-too-fine", place.at("cell"), "smallest", finest, "cells", MOST_CELLS);
    } else if (wish.isPresent()) {
      return wish.getAsDouble();
    }
    return Math.max(Math.max(SMALLEST_DEFAULT, Math.sqrt(area / USUAL_CELLS)), smallest);
  }

  /** The smallest cell that keeps the limit, found by growing one that would just fill the box. */
  private static double smallest(Envelope box) {
    double cell = Math.sqrt(Math.max(box.getArea(), 1e-12) / MOST_CELLS);
    cell = Math.max(cell, Math.max(box.getWidth(), box.getHeight()) / MOST_CELLS);
    while (cells(box, cell) > MOST_CELLS) {
      cell *= 1.001;
    }
    return cell;
  }

  private static double cells(Envelope box, double cell) {
    return (double) Lattice.across(box.getWidth(), cell) * Lattice.across(box.getHeight(), cell);
  }
}
