package dev.fillplane.web;

import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.render.Paper;
import dev.fillplane.web.json.Words;
import java.util.Arrays;
import java.util.Optional;

/** The query parameter {@code page}: the paper of a sheet. */
final class PageParameter {

  private PageParameter() {}

  /**
   * The paper asked for; what is usual with the units unless told.
   *
   * @throws Refusal if there is no such paper
   */
  static Paper of(Optional<String> told, UnitSystem units) {
    return told.map(PageParameter::read).orElseGet(() -> Paper.usual(units));
  }

  private static Paper read(String told) {
    return Arrays.stream(Paper.values())
        .filter(paper -> Words.of(paper).equals(told))
        .findFirst()
        .orElseThrow(
            () -> Refusal.of(Problem.Kind.BAD_REQUEST, "The parameter page must be a4 or letter."));
  }
}
