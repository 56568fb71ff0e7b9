package dev.fillplane.pour;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds what a pour loses first. */
final class Losses {

  private final FloorPour pour;

  private Losses(FloorPour pour) {
    this.pour = pour;
  }

  /** The first edge or batch that is lost; none where every edge is met and every batch placed. */
  static Optional<LostEdge> first(FloorPour pour) {
    Losses losses = new Losses(pour);
    return Stream.concat(losses.edge().stream(), losses.batch().stream())
        .min(Comparator.comparingDouble(LostEdge::at));
  }

  private Optional<LostEdge> edge() {
    Meetings meetings = pour.floor().meetings();
    int lost = meetings.firstOlder(pour.healing().time(), pour.run());
    return lost < 0
        ? Optional.empty()
        : Optional.of(lost(meetings.ribbon(lost), meetings.made(lost), meetings.met(lost)));
  }

  private Optional<LostEdge> batch() {
    for (LaidBay bay : pour.floor().bays()) {
      for (int i = 0; i < bay.batches(); i++) {
        int batch = bay.firstBatch() + i;
        if (pour.run().placed(batch) - pour.run().firstWater(batch) > pour.healing().time()) {
          return Optional.of(lost(bay.firstRibbon() + bay.stripOf(i), batch, batch));
        }
      }
    }
    return Optional.empty();
  }

  /** Ribbons and batches count from 0 over the whole floor. */
  private LostEdge lost(int ribbon, int made, int met) {
    LaidBay in = pour.floor().bays().get(0);
    for (LaidBay bay : pour.floor().bays()) {
      in = bay.batches() > 0 && bay.firstBatch() <= met ? bay : in;
    }
    return new LostEdge(
        in.bay().id(),
        ribbon + 1,
        met - in.firstBatch() + 1,
        pour.run().firstWater(made) + pour.healing().time(),
        pour.run().placed(met));
  }
}
