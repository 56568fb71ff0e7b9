package dev.fillplane.target;

import java.util.List;

/**
 * The planes of the finished pour.
 *
 * @param groups at least one; each room is in one of them
 */
public record FoundTarget(TargetShape shape, List<RoomsTarget> groups) {

  /** Copies the groups. */
  public FoundTarget {
    groups = List.copyOf(groups);
  }

  /** The plane of a room, by its number. */
  public Plane plane(int room) {
    return groups.stream()
        .filter(group -> group.rooms().contains(room))
        .findFirst()
        .orElseThrow()
        .plane();
  }

  /** The plane of the first rooms; of all where they share one. */
  public Plane plane() {
    return groups.get(0).plane();
  }

  /** What holds any of the planes. */
  public List<Bound> boundBy() {
    return groups.stream().flatMap(group -> group.boundBy().stream()).toList();
  }
}
