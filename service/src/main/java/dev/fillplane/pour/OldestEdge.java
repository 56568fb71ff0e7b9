package dev.fillplane.pour;

/**
 * The oldest edge of a pour, the first of several; of a pour without edges the first ribbon of the
 * first bay that has batches.
 *
 * @param bay where it lies
 * @param ribbon order of its ribbon
 * @param age when it is met; 0 if nothing meets an edge
 */
record OldestEdge(LaidBay bay, int ribbon, double age) {

  /** Of a pour with at least one batch. */
  static OldestEdge of(FloorPour pour) {
    double[] ages = pour.floor().meetings().ofRibbons(pour.run());
    OldestEdge oldest = null;
    for (LaidBay bay : pour.floor().bays()) {
      for (int i = 0; i < bay.strips().size() && bay.batches() > 0; i++) {
        double age = ages[bay.firstRibbon() + i];
        if (oldest == null || age > oldest.age()) {
          oldest = new OldestEdge(bay, bay.firstRibbon() + i + 1, age);
        }
      }
    }
    return oldest;
  }
}
