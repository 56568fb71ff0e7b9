package org.example.estimates;

import dev.fillplane.client.FillplaneClient;
import dev.fillplane.client.host.HostRun;
import dev.fillplane.client.host.Hosts;
import dev.fillplane.client.host.RunSummary;
import java.net.URI;

/** Estimates all units of the folder host by the service at an address. */
public final class EstimateFolder {
  private EstimateFolder() {}

  /** Wants the address of the service. */
  public static void main(String[] arguments) {
    FillplaneClient client = FillplaneClient.at(URI.create(arguments[0])).build();
    RunSummary summary = new HostRun(client).estimate(Hosts.find("folder"));
    System.out.println("estimated: " + summary.done() + ", refused: " + summary.refused());
    summary.endedBy().ifPresent(reason -> System.out.println("ended early: " + reason));
    if (!summary.unanswered().isEmpty()) {
      System.out.println("ask again for: " + summary.unanswered());
    }
  }
}
