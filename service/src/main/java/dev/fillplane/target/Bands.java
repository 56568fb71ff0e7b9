package dev.fillplane.target;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Reads fixed heights and ceilings as heights of the pour. */
final class Bands {

  /** A threshold may lie in the wall; a fixed height further off than this is odd; our choice. */
  private static final double FAR = 0.5;

  private final OptionalDouble coveringThickness;
  private final Place place;
  private final Findings findings;
  private final List<Band> bands = new ArrayList<>();

  private Bands(OptionalDouble coveringThickness, Place place, Findings findings) {
    this.coveringThickness = coveringThickness;
    this.place = place;
    this.findings = findings;
  }

  /** Fixed heights, then ceilings, in the order of the request. */
  static List<Band> of(
      TargetWish wish,
      List<Room> rooms,
      OptionalDouble coveringThickness,
      Place place,
      Findings findings) {
    Bands read = new Bands(coveringThickness, place, findings);
    for (int i = 0; i < wish.fixed().size(); i++) {
      read.add(i, wish.fixed().get(i), rooms);
    }
    for (int i = 0; i < wish.ceiling().size(); i++) {
      read.add(i, wish.ceiling().get(i));
    }
    return List.copyOf(read.bands);
  }

  private void add(int i, FixedHeight fixed, List<Room> rooms) {
    Place here = place.at("fixed").at(i);
    OptionalDouble above = above(fixed.of(), here);
    if (above.isPresent()) {
      double height = fixed.elevation() - above.getAsDouble();
      double tolerance = Math.max(0, fixed.tolerance());
      bands.add(
          new Band(
              BoundKind.FIXED, i, fixed.x(), fixed.y(), height - tolerance, height + tolerance));
    }
    Position position = new Position(fixed.x(), fixed.y());
    double off = RoomGroups.distance(position, rooms.get(RoomGroups.nearest(position, rooms)));
    if (off > FAR) {
      findings.warning("fixed-height-outside", here, "off", Amount.of(off, Dimension.PLAN));
    }
  }

  private void add(int i, Ceiling ceiling) {
    OptionalDouble above = above(ceiling.of(), place.at("ceiling").at(i));
    if (above.isPresent()) {
      double height = ceiling.elevation() - above.getAsDouble();
      double lowest = Double.NEGATIVE_INFINITY;
      bands.add(new Band(BoundKind.CEILING, i, ceiling.x(), ceiling.y(), lowest, height));
    }
  }

  /** What lies above the pour at a height; empty, with an error, where it is not known. */
  private OptionalDouble above(HeightOf of, Place here) {
    if (of == HeightOf.POUR) {
      return OptionalDouble.of(0);
    }
    if (coveringThickness.isEmpty()) {
      findings.error("covering-thickness-needed", here);
    }
    return coveringThickness;
  }
}
