package dev.fillplane.safety;

import dev.fillplane.room.Room;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;

/** The rooms whose floor was laid in certain years. */
record BuiltRooms(List<Room> rooms) {

  static BuiltRooms in(SafetyInput job, IntPredicate years) {
    return new BuiltRooms(
        job.rooms().stream()
            .filter(room -> room.built().isPresent() && years.test(room.built().getAsInt()))
            .toList());
  }

  static BuiltRooms unknown(SafetyInput job) {
    return new BuiltRooms(job.rooms().stream().filter(room -> room.built().isEmpty()).toList());
  }

  boolean isEmpty() {
    return rooms.isEmpty();
  }

  /** The earliest year told. */
  int year() {
    return rooms.stream().mapToInt(room -> room.built().orElseThrow()).min().orElseThrow();
  }

  String names() {
    return rooms.stream().map(Room::id).collect(Collectors.joining(", "));
  }
}
