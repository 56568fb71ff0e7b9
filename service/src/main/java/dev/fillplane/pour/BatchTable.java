package dev.fillplane.pour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Asks the batches of a pour, of which there is at least one, what hangs on them. */
record BatchTable(Pour pour) {

  List<Batch> batches() {
    return pour.batches();
  }

  /** Bags of the batches from {@code from} up to but without {@code to}. */
  int bags(int from, int to) {
    return batches().subList(from, to).stream().mapToInt(Batch::bags).sum();
  }

  /** Most bags that are wet but not on the floor at one time; batches are placed in their order. */
  int wetAtOnce() {
    int most = 0;
    int wet = 0;
    int oldest = 0;
    for (Batch next : batches()) {
      wet += next.bags();
      while (batches().get(oldest).placed() <= next.firstWater()) {
        wet -= batches().get(oldest++).bags();
      }
      most = Math.max(most, wet);
    }
    return most;
  }

  /** The largest number of bags in one bay. */
  int bagsOfLargestBay() {
    int most = 0;
    for (int from = 0; from < batches().size(); from = endOfBay(from)) {
      most = Math.max(most, bags(from, endOfBay(from)));
    }
    return most;
  }

  /** The index after the last batch of the bay in which {@code batch} lies. */
  int endOfBay(int batch) {
    String bay = batches().get(batch).bay();
    int end = batch + 1;
    while (end < batches().size() && batches().get(end).bay().equals(bay)) {
      end++;
    }
    return end;
  }

  /** The index of the first batch of the last bay; 0 if there is one bay only. */
  int beginOfLastBay() {
    int begin = 0;
    while (endOfBay(begin) < batches().size()) {
      begin = endOfBay(begin);
    }
    return begin;
  }

  /** The first batch that meets the oldest edge, if any batch meets one. */
  Optional<Batch> meetsOldestEdge() {
    return batches().stream()
        .filter(batch -> batch.edgeAge().isPresent())
        .max(
            Comparator.comparingDouble((Batch batch) -> batch.edgeAge().getAsDouble())
                .thenComparing(Comparator.comparingDouble(Batch::placed).reversed()));
  }

  /** The ends of all bays but the last. */
  List<StopPlace> stops() {
    List<StopPlace> stops = new ArrayList<>();
    int all = batches().size();
    for (int end = endOfBay(0); end < all; end = endOfBay(end)) {
      Batch last = batches().get(end - 1);
      stops.add(
          new StopPlace(
              last.bay(),
              last.lastRibbon(),
              last.placed(),
              bags(0, end),
              bags(end, all),
              pour.joints().stream().filter(joint -> joint.bay().equals(last.bay())).toList()));
    }
    return stops;
  }

  /** The ribbon of a given order. */
  Ribbon ribbon(int order) {
    return pour.bays().stream()
        .flatMap(bay -> bay.ribbons().stream())
        .filter(ribbon -> ribbon.order() == order)
        .findFirst()
        .orElseThrow();
  }
}
