package dev.fillplane.pour;

import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;
import java.util.Optional;

/**
 * The pour in sum.
 *
 * @param batches mixed
 * @param bags in them
 * @param water measured for them
 * @param volume on the floor
 * @param residue of what is mixed, left over at the ends of the bays
 * @param interval mean time between two batches on the floor; 0 if there are not two
 * @param end when all is rolled and washed, from the start of the work
 * @param finish the same by the clock, if a start is told
 * @param work time at work of all people together, by what they do, in the order of {@link Role}
 */
public record PourTotals(
    int batches,
    int bags,
    @Measured(Dimension.LIQUID) double water,
    @Measured(Dimension.FILL) double volume,
    @Measured(Dimension.FILL) double residue,
    @Measured(Dimension.TIME) double interval,
    @Measured(Dimension.TIME) double end,
    Optional<String> finish,
    List<RoleTime> work) {

  /** Copies the list. */
  public PourTotals {
    work = List.copyOf(work);
  }
}
