package dev.fillplane.pour;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;

/**
 * What to do when the pour goes wrong.
 *
 * @param standstill longest time for which mixing may stand still, once and at any moment, with
 *     every edge still met before it heals no more; 0 if there is none
 * @param stops where the pour may end before it is finished, in the order of the pour
 * @param cases what can go wrong in this job; empty where nothing is poured
 */
public record Troubles(
    @Measured(Dimension.TIME) double standstill, List<StopPlace> stops, List<Trouble> cases) {

  /** Copies the lists. */
  public Troubles {
    stops = List.copyOf(stops);
    cases = List.copyOf(cases);
  }
}
