package dev.fillplane.plan;

import dev.fillplane.flatness.FNumber;
import dev.fillplane.flatness.FNumbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;

/** One kind of F-number, line by line within their sections. */
final class SectionNumbers {

  private static final int NO_ROOM = -1;

  private final TreeMap<Integer, List<FNumber>> bySection = new TreeMap<>();
  private final TreeMap<Integer, Double> areas = new TreeMap<>();

  /** Adds the number of a line in a room, if known, with the area of its section, if known. */
  void add(OptionalInt room, OptionalDouble area, FNumber number) {
    int section = room.orElse(NO_ROOM);
    bySection.computeIfAbsent(section, none -> new ArrayList<>()).add(number);
    area.ifPresent(known -> areas.put(section, known));
  }

  /** The least of all lines. */
  double least() {
    return bySection.values().stream()
        .flatMap(List::stream)
        .mapToDouble(FNumber::value)
        .min()
        .orElse(FNumbers.MOST);
  }

  /**
   * All together: lines of a section by their count, sections by area; where the area of one is not
   * known, all lines by their count.
   */
  OptionalDouble combined() {
    if (bySection.size() < 2 || !areas.keySet().equals(bySection.keySet())) {
      return FNumbers.combined(bySection.values().stream().flatMap(List::stream).toList());
    }
    List<Double> numbers = new ArrayList<>();
    for (List<FNumber> lines : bySection.values()) {
      numbers.add(FNumbers.combined(lines).orElseThrow());
    }
    return FNumbers.combined(numbers, List.copyOf(areas.values()));
  }

  static String text(double number) {
    return String.format(Locale.ROOT, "%.1f", number);
  }
}
