package dev.fillplane.pour;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;

/** Times by the clock on the wall. */
final class WallClock {

  private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("HH:mm");

  private final LocalTime start;

  /**
   * A clock that shows {@code start} when the work starts.
   *
   * @param start as HH:MM
   */
  WallClock(String start) {
    this.start = LocalTime.parse(start);
  }

  /** What it shows after some seconds; the minute that has begun. */
  String after(double seconds) {
    return start.plusSeconds((long) seconds).format(MINUTES);
  }
}
