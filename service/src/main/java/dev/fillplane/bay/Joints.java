package dev.fillplane.bay;

import dev.fillplane.room.Opening;
import dev.fillplane.room.OpeningKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The planned joints: one at each doorway between two bays, however often it was told. */
final class Joints {

  /** Doorways of the same two rooms whose middles are closer are one, told from both sides. */
  private static final double SAME = 0.6;

  private record Told(int first, int second, Opening opening) {

    boolean same(Told other) {
      return first == other.first
          && second == other.second
          && opening.middle().distance(other.opening.middle()) < SAME;
    }
  }

  private Joints() {}

  /** The joints between {@code bays}, which stand in the order of the pour. */
  static List<Joint> between(List<Bay> bays) {
    List<Told> told = new ArrayList<>();
    for (int i = 0; i < bays.size(); i++) {
      for (Opening opening : bays.get(i).room().openings()) {
        int other = opening.kind() == OpeningKind.DOORWAY ? indexOf(bays, opening) : -1;
        Told next = new Told(Math.min(i, other), Math.max(i, other), opening);
        if (other >= 0 && other != i && told.stream().noneMatch(next::same)) {
          told.add(next);
        }
      }
    }
    return told.stream().map(t -> joint(bays.get(t.first()), t.opening())).toList();
  }

  private static int indexOf(List<Bay> bays, Opening opening) {
    for (int i = 0; i < bays.size(); i++) {
      if (opening.into().equals(Optional.of(bays.get(i).room().id()))) {
        return i;
      }
    }
    return -1;
  }

  private static Joint joint(Bay first, Opening opening) {
    return new Joint(first.id(), opening.id(), opening.from(), opening.to());
  }
}
