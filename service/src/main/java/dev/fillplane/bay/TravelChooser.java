package dev.fillplane.bay;

import dev.fillplane.room.Position;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * Chooses the direction in which a bay is poured, and which of several exits it leads to.
 *
 * <p>Directions across and along the longer walls compete ({@link Directions}). Of each pair of
 * direction and exit three shares are weighed (own rule, no source):
 *
 * <ul>
 *   <li>how far before the end of the travel the exit lies, as a share of the travel, times 3: the
 *       travel follows the exit, also when the deep part is at the door;
 *   <li>the mean front (area over travel) as a share of the longest mean front of any direction,
 *       and by how many times 3 m it is over what a crew can serve;
 *   <li>how far ahead of the middle of the floor the middle of the pour lies, as a share of the
 *       travel, times 0.5: the deep part comes first where that costs little.
 * </ul>
 *
 * The lowest sum wins; where two are equal the exit further to the left of the travel does, which
 * does not depend on how the plan is turned.
 */
final class TravelChooser {

  private static final double EQUAL = 1e-6;

  private record Weighed(TravelChoice choice, double score, double left) {

    boolean beats(Weighed other) {
      double gain = other.score - score;
      return gain > EQUAL || (gain >= -EQUAL && left > other.left + EQUAL);
    }
  }

  private final Polygon part;
  private final List<Travel> directions;
  private final double frontServed;
  private final MiddleOfPour middle;

  /** Among directions for a part, where a front of {@code frontServed} can be kept up with. */
  TravelChooser(Polygon part, List<Travel> directions, PassDepth depth, double frontServed) {
    this.part = part;
    this.directions = directions;
    this.frontServed = frontServed;
    this.middle = MiddleOfPour.of(part, directions.get(0), depth);
  }

  /** The best way to one of {@code exits}, at least one. */
  TravelChoice choose(List<Position> exits) {
    double longest = 0;
    for (Travel travel : directions) {
      longest = Math.max(longest, part.getArea() / extentOf(travel).getWidth());
    }
    Weighed best = null;
    for (Travel travel : directions) {
      Envelope extent = extentOf(travel);
      for (Position exit : exits) {
        Weighed next = weigh(new TravelChoice(travel, exit, extent), longest);
        best = best == null || next.beats(best) ? next : best;
      }
    }
    return best.choice();
  }

  private Weighed weigh(TravelChoice choice, double longest) {
    Travel travel = choice.travel();
    double length = choice.extent().getWidth();
    double before =
        Math.max(0, (choice.extent().getMaxX() - travel.along(choice.wayOut())) / length);
    double front = part.getArea() / length;
    double over = Math.max(0, front - frontServed) / 3;
    double ahead = (travel.along(middle.pour()) - travel.along(middle.floor())) / length;
    double left = travel.across(choice.wayOut()) - travel.across(middle.floor());
    return new Weighed(choice, 3 * before + front / longest + over + 0.5 * ahead, left);
  }

  private Envelope extentOf(Travel travel) {
    return travel.toFrame().transform(part).getEnvelopeInternal();
  }
}
