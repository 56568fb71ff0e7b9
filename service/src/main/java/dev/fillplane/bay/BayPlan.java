package dev.fillplane.bay;

import dev.fillplane.depth.Depths;
import dev.fillplane.depth.Fill;
import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.room.OpeningKind;
import dev.fillplane.room.Room;
import java.util.ArrayList;
import java.util.List;

/**
 * The bays of a floor in the order of the pour, cut into ribbons.
 *
 * <p>One bay a room. The room with most doorways between it and an exit comes first, of those the
 * one with the longest way; the rooms with an exit come last. Rooms that reach no exit are poured
 * before all others, with an assumed way out. Each bay is travelled toward its way out and cut
 * across the travel into strips that tile it, ordered so that the travel goes on toward the way out
 * also where strips fall apart. Exact up to 10 nm on plan; turning or shifting the plan changes no
 * more than that.
 *
 * @param bays in the order of the pour
 * @param joints at the doorways between them
 */
public record BayPlan(List<Bay> bays, List<Joint> joints) {

  /** Copies the lists. */
  public BayPlan {
    bays = List.copyOf(bays);
    joints = List.copyOf(joints);
  }

  /**
   * Plans the bays of a floor.
   *
   * @param rooms valid rooms, each with its own id
   * @param depths how deep the pour is
   * @param rule how wide ribbons are
   */
  public static BayPlan of(List<Room> rooms, Depths depths, RibbonRule rule) {
    List<Bay> bays = new ArrayList<>();
    for (WayOut way : WaysOut.farthestFirst(rooms)) {
      bays.add(bay(rooms.get(way.room()), way, depths, rule));
    }
    return new BayPlan(bays, Joints.between(bays));
  }

  private static Bay bay(Room room, WayOut way, Depths depths, RibbonRule rule) {
    TravelChoice choice = TravelChoice.of(room.outline().polygon(), way.places(), depths);
    List<Strip> strips = StripCutter.cut(room.outline().polygon(), choice, depths, rule);
    double area = 0;
    double volume = 0;
    for (Strip strip : strips) {
      area += strip.fill().area();
      volume += strip.fill().volume();
    }
    Fill fill = new Fill(area, volume);
    return new Bay(room.id(), room, choice.wayOut(), way.known(), choice.travel(), strips, fill);
  }

  /**
   * Warns where a way out had to be assumed: once if there is no exit at all, else for each room
   * that reaches none.
   *
   * @param rooms as they stand in the request
   * @param place of the list of rooms
   * @param findings takes the warnings
   */
  public void warn(List<Room> rooms, Place place, Findings findings) {
    boolean anyExit =
        rooms.stream()
            .flatMap(room -> room.openings().stream())
            .anyMatch(opening -> opening.kind() == OpeningKind.EXIT);
    if (!anyExit) {
      findings.warning("no-exit", place);
      return;
    }
    for (int i = 0; i < rooms.size(); i++) {
      if (!leadsToExit(rooms.get(i).id())) {
        findings.warning("room-without-way-out", place.at(i), "room", rooms.get(i).id());
      }
    }
  }

  private boolean leadsToExit(String room) {
    return bays.stream().anyMatch(bay -> bay.room().id().equals(room) && bay.leadsToExit());
  }
}
