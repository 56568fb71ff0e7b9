package dev.fillplane.target;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.room.Position;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Finds the planes of the finished pour: one for each group of rooms that share one.
 *
 * <ul>
 *   <li><em>Level</em>: the cheapest level plane that keeps all limits. Where nothing may be ground
 *       that is the lowest over the highest of the mean floor and of the readings in the rooms.
 *   <li><em>Plane</em>: the cheapest of all planes that keep all limits ({@link CheapestPlane}, or
 *       {@link LeastFillPlane} where nothing may be ground).
 *   <li><em>Given</em>: as stated, or a level with an elevation; only looked at.
 * </ul>
 *
 * Limits are the minimum depth (which may be won by grinding to a depth), fixed heights, ceilings
 * and the slope. Where none can keep them all, those that fight are told. Slopes above 2 mm/m are
 * odd and above 5 mm/m refused: common practice, no source.
 */
public final class TargetFinder {

  /** Slope above which a leveller is hard to keep in its plane; common practice, no source. */
  public static final double STEEP = 0.002;

  /** Slope above which a leveller does not stay; common practice, no source. */
  public static final double TOO_STEEP = 0.005;

  private final TargetWish wish;
  private final double minimumDepth;
  private final HighPoints highs;
  private final Rates rates;
  private final Place place;
  private final Findings findings;

  private TargetFinder(
      TargetWish wish, double minimumDepth, HighPoints highs, Place place, Findings findings) {
    this.wish = wish;
    this.minimumDepth = minimumDepth;
    this.highs = highs;
    this.rates = Rates.of(wish);
    this.place = place;
    this.findings = findings;
  }

  /**
   * Finds the target. Where a finding is an error the answer is only the nearest that could be
   * made.
   *
   * @param minimumDepth least depth everywhere; not negative
   * @param coveringThickness covering with its adhesive; wanted where a height is of the finish
   * @param place of the wish
   */
  public static FoundTarget find(
      TargetWish wish,
      double minimumDepth,
      HighPoints highs,
      OptionalDouble coveringThickness,
      Place place,
      Findings findings) {
    List<Room> rooms = highs.floor().rooms();
    List<Band> bands = Bands.of(wish, rooms, coveringThickness, place, findings);
    TargetFinder finder = new TargetFinder(wish, minimumDepth, highs, place, findings);
    if (wish.elevation().isPresent() && wish.shape() != TargetShape.PLANE) {
      return finder.given(bands);
    }
    if (wish.shape() == TargetShape.GIVEN) {
      findings.error("elevation-needed", place.at("elevation"));
    }
    if (wish.shape() == TargetShape.PLANE && wish.elevation().isPresent()) {
      findings.warning("elevation-unused", place.at("elevation"));
    }
    FoundTarget found = finder.sought(bands, rooms);
    DoorSteps.warn(found, rooms, findings);
    return found;
  }

  private FoundTarget given(List<Band> bands) {
    Limits limits = new Limits(highs, minimumDepth, wish.grind().depth(), bands, 0, false);
    Plane plane = GivenTarget.of(wish, limits, place, findings);
    return new FoundTarget(
        TargetShape.GIVEN, List.of(new RoomsTarget(highs.rooms(), plane, List.of())));
  }

  private FoundTarget sought(List<Band> bands, List<Room> rooms) {
    int[] nearest =
        bands.stream()
            .mapToInt(band -> RoomGroups.nearest(new Position(band.x(), band.y()), rooms))
            .toArray();
    List<RoomsTarget> groups = new ArrayList<>();
    for (List<Integer> group : RoomGroups.of(wish.sharing(), rooms)) {
      List<Band> theirs =
          IntStream.range(0, nearest.length)
              .filter(i -> group.contains(nearest[i]))
              .mapToObj(bands::get)
              .toList();
      groups.add(inRooms(group, theirs));
    }
    boolean plane = wish.shape() == TargetShape.PLANE;
    return new FoundTarget(plane ? TargetShape.PLANE : TargetShape.LEVEL, groups);
  }

  private RoomsTarget inRooms(List<Integer> rooms, List<Band> bands) {
    boolean level = wish.shape() != TargetShape.PLANE;
    double steepest = level ? 0 : Math.max(0, wish.maximumSlope());
    Limits limits =
        new Limits(highs.in(rooms), minimumDepth, wish.grind().depth(), bands, steepest, level);
    Limits kept = bands.isEmpty() ? limits : Fights.settled(limits, place, findings);
    Plane plane = level ? level(kept) : plane(kept);
    return new RoomsTarget(rooms, plane, Bounds.of(plane, kept));
  }

  private Plane level(Limits limits) {
    return Plane.level(LevelSearch.find(limits, rates));
  }

  private Plane plane(Limits limits) {
    Optional<Plane> found = PlaneSearch.find(limits, rates);
    if (found.isEmpty()) {
      findings.warning("plane-not-found", place.at("shape"));
      return level(limits);
    }
    SlopeCheck.look(found.get(), place.at("maximumSlope"), findings);
    return found.get();
  }
}
