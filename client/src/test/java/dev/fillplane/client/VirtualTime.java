package dev.fillplane.client;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** A clock that a pause moves on at once; keeps the pauses. */
final class VirtualTime implements Time {
  private final List<Duration> pauses = new ArrayList<>();
  private Instant now;

  VirtualTime(String start) {
    now = Instant.parse(start);
  }

  @Override
  public synchronized Instant now() {
    return now;
  }

  @Override
  public synchronized void pause(Duration length) throws InterruptedException {
    if (Thread.interrupted()) {
      throw new InterruptedException();
    }
    pauses.add(length);
    now = now.plus(length);
  }

  synchronized List<Duration> pauses() {
    return List.copyOf(pauses);
  }
}
