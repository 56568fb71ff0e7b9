package dev.fillplane.plan;

import java.util.List;
import java.util.stream.Stream;

/** Every method that a plan uses, with its source; docs/formulas.md says the same at length. */
public final class Methods {

  private static final List<Method> ALL =
      Stream.of(FloorMethods.ALL, SupplyMethods.ALL, PourMethods.ALL, EstimateMethods.ALL)
          .flatMap(List::stream)
          .toList();

  private Methods() {}

  /** All of them, in the order in which a plan uses them. */
  public static List<Method> all() {
    return ALL;
  }

  /** Their ids. */
  public static List<String> ids() {
    return ALL.stream().map(Method::id).toList();
  }
}
