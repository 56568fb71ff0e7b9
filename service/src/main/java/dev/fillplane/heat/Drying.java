package dev.fillplane.heat;

import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.Optional;

/**
 * When the floor may be used, by the sheet's times, longer when it is colder than the sheet; and
 * what base and air say to it.
 *
 * @param walkOn people may walk on it
 * @param nextLift the next layer may follow, primed
 * @param covering it may be covered
 * @param moistureTests as in {@code moisture}
 * @param moisture of the slab, before it is primed
 * @param air dew point and evaporation, where the humidity is told
 * @param curing what the fresh floor wants until it is dry
 */
public record Drying(
    @Measured(Dimension.TIME) double walkOn,
    @Measured(Dimension.TIME) double nextLift,
    @Measured(Dimension.TIME) double covering,
    int moistureTests,
    SlabMoisture moisture,
    Optional<AirReport> air,
    List<Remark> curing) {

  /** Copies the list. */
  public Drying {
    curing = List.copyOf(curing);
  }
}
