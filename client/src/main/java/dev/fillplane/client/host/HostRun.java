package dev.fillplane.client.host;

import dev.fillplane.client.FillplaneClient;
import java.time.Duration;

/**
 * Leads the units of a host to the service and what came of them back.
 *
 * <p>A unit that cannot be planned is handed over as its trouble and stops no other. Where the
 * service is busy or cannot be reached, the client asks again as its {@link
 * dev.fillplane.client.Retries} say; only then the run ends, and names the units that were taken
 * and not answered. Runs of several threads do not disturb each other.
 */
public final class HostRun {
  private final FillplaneClient client;

  /** Runs by a client. */
  public HostRun(FillplaneClient client) {
    this.client = client;
  }

  /**
   * Line items of every unit, with the host's prices: a call for each, two at a time.
   *
   * @throws HostException if the host was built for another version
   */
  public RunSummary estimate(Host host) {
    Hosts.check(host);
    return new EstimateRun(client, host).run();
  }

  /**
   * Plans of every unit, by one stream: for as many units as there are, few of them in memory.
   *
   * @throws HostException if the host was built for another version
   */
  public RunSummary plan(Host host) {
    Hosts.check(host);
    return new StreamRun(client, host).run();
  }

  /**
   * Plans of every unit, by one job that goes on while the service is started anew. All requests
   * are in memory once; references must differ.
   *
   * @param patience how long to wait for the end of the job; it is cancelled then, and the plans
   *     made so far are handed over
   * @throws HostException if the host was built for another version
   */
  public RunSummary job(Host host, Duration patience) {
    Hosts.check(host);
    return new JobRun(client, host).run(patience);
  }
}
