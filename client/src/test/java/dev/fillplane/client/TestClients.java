package dev.fillplane.client;

import java.net.URI;

/** Clients whose pauses take no time. */
public final class TestClients {
  private TestClients() {}

  /** A client that asks once. */
  public static FillplaneClient once(URI address) {
    return FillplaneClient.at(address).retries(Retries.none()).time(time(), 1).build();
  }

  /** A client that asks again as usual. */
  public static FillplaneClient patient(URI address) {
    return FillplaneClient.at(address).time(time(), 1).build();
  }

  private static VirtualTime time() {
    return new VirtualTime("2026-03-01T08:00:00Z");
  }
}
