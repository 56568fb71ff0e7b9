package dev.fillplane.pour;

import dev.fillplane.bay.Joint;
import dev.fillplane.quantity.Dimension;
import dev.fillplane.quantity.Measured;
import java.util.List;

/**
 * Where a pour may end before it is finished: at the end of a bay, whose edge stands at full depth.
 *
 * @param bay that ends here
 * @param ribbon order of its last ribbon with a batch in it
 * @param placed when its last batch is on the floor
 * @param bagsUsed bags mixed up to here
 * @param bagsLeft bags still to come in the bays after it
 * @param joints where its edge stands against a board; none where walls hold it all round
 */
public record StopPlace(
    String bay,
    int ribbon,
    @Measured(Dimension.TIME) double placed,
    int bagsUsed,
    int bagsLeft,
    List<Joint> joints) {

  /** Copies the joints. */
  public StopPlace {
    joints = List.copyOf(joints);
  }
}
