package dev.fillplane.job;

/**
 * A unit as it was sent.
 *
 * @param reference the caller's name of it
 * @param packed the request as it is kept
 */
public record UnitRequest(String reference, byte[] packed) {

  /** The unit whose request is a part of a body, from {@code start} to before {@code end}. */
  public static UnitRequest of(String reference, byte[] body, int start, int end) {
    return new UnitRequest(reference, Packed.pack(body, start, end - start));
  }
}
