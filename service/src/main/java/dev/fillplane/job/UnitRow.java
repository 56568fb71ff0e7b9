package dev.fillplane.job;

/**
 * A unit with its answer.
 *
 * @param unit its place in the request, from 0
 * @param packed the answer as it is kept; empty while it waits
 */
public record UnitRow(int unit, String reference, UnitState state, byte[] packed) {

  /** The plan or the problem, byte for byte as it was made; only of a unit that is done. */
  public byte[] json() {
    return Packed.unpack(packed);
  }
}
