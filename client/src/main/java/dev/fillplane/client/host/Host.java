package dev.fillplane.client.host;

import java.util.Optional;

/**
 * A program that has floors planned and priced; found by {@link java.util.ServiceLoader}, so it
 * wants a public constructor without arguments.
 */
public interface Host {
  /**
   * The version of the interfaces of this package. The compiler writes it into the host that names
   * it, so {@code return VERSION;} in {@link #builtFor} tells the version that host was built for,
   * also where it runs with a later one.
   */
  int VERSION = 1;

  /** Return {@link #VERSION}. */
  int builtFor();

  /** The name by which this host is found. */
  String name();

  /** Where rooms and readings come from. */
  UnitSource source();

  /** Where line items, plans and troubles go. */
  EstimateSink sink();

  /** Where progress is shown; nowhere unless told. */
  default ProgressView progress() {
    return ProgressView.NONE;
  }

  /** What the caller pays; line items have no amounts unless told. */
  default Optional<PriceList> prices() {
    return Optional.empty();
  }
}
