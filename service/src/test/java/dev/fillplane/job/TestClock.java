package dev.fillplane.job;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;

/** The time of the machine, moved by hand. */
final class TestClock extends Clock {

  private final AtomicReference<Duration> moved = new AtomicReference<>(Duration.ZERO);

  void jump(Duration by) {
    moved.updateAndGet(before -> before.plus(by));
  }

  @Override
  public Instant instant() {
    return Instant.now().plus(moved.get());
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return this;
  }
}
