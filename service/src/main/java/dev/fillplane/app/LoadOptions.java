package dev.fillplane.app;

import dev.fillplane.web.Capacity;
import dev.fillplane.web.Settings;
import dev.fillplane.web.Stopping;
import java.time.Duration;
import picocli.CommandLine.Option;

/** How much work the service takes at once, and how it ends. */
final class LoadOptions {

  private static final long MEGABYTE = 1_000_000;

  @Option(
      names = "--places",
      description = "Heavy calculations at once; as many as processors, at least 2, unless told.")
  private Integer places;

  @Option(
      names = "--waiting",
      description = "Heavy requests that may wait for a place, each 10 s at most; 64 unless told.")
  private Integer waiting;

  @Option(
      names = "--deadline",
      paramLabel = "SECONDS",
      description =
          "How long a calculation may run, with a second more per megabyte of its body; 30 unless"
              + " told.")
  private Integer deadline;

  @Option(
      names = "--held-megabytes",
      paramLabel = "MB",
      description =
          "Large bodies held at once, all requests together, and so the largest body; a 24th of the"
              + " heap unless told.")
  private Integer heldMegabytes;

  @Option(
      names = "--drain",
      paramLabel = "SECONDS",
      defaultValue = "2",
      description =
          "On SIGTERM: how long /health/ready says 503 before no more requests are taken.")
  private int drain;

  @Option(
      names = "--end",
      paramLabel = "SECONDS",
      defaultValue = "20",
      description = "How long requests that are being answered may take after that.")
  private int end;

  /**
   * The same with what was told.
   *
   * @throws IllegalArgumentException if a number makes no sense
   */
  Settings in(Settings settings) {
    Capacity capacity = settings.capacity();
    int count = told(places, capacity.places(), 1);
    capacity = capacity.withPlaces(count, told(waiting, capacity.waiting(), 0));
    int usualSeconds = (int) capacity.deadline().toSeconds();
    capacity = capacity.withDeadline(Duration.ofSeconds(told(deadline, usualSeconds, 1)));
    if (heldMegabytes != null) {
      capacity = capacity.withHeldBytes(told(heldMegabytes, 1, 1) * MEGABYTE);
    }
    Stopping stopping =
        new Stopping(Duration.ofSeconds(told(drain, 0, 0)), Duration.ofSeconds(told(end, 0, 0)));
    return settings.withCapacity(capacity).withStopping(stopping);
  }

  private static int told(Integer told, int usual, int least) {
    int number = told == null ? usual : told;
    if (number < least) {
      throw new IllegalArgumentException("At least " + least + ", not " + number + ".");
    }
    return number;
  }
}
