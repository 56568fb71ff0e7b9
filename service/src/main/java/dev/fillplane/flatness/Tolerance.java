package dev.fillplane.flatness;

import java.util.List;
import java.util.Optional;

/**
 * A published demand on the flatness of floors.
 *
 * @param id the word for it in a request
 * @param name what people call it
 * @param spanNeeded whether its limit depends on the distance between the contacts
 * @param limit of the gap, where it has one that depends on nothing; the first of the figures
 * @param figures every gap with its edge, where they depend on nothing
 * @param enough how many of the figures a floor must keep
 * @param fNumbers that it asks for, if any
 * @param source where the figures come from
 */
public record Tolerance(
    String id,
    String name,
    boolean spanNeeded,
    Optional<FlatnessLimit> limit,
    List<GapLimit> figures,
    Enough enough,
    Optional<FNumberClass> fNumbers,
    String source) {

  /** Copies the list. */
  public Tolerance {
    figures = List.copyOf(figures);
  }

  /** One whose figures depend on nothing, the main one first; F-numbers alone without any. */
  static Tolerance of(
      String id,
      String name,
      List<GapLimit> figures,
      Enough enough,
      Optional<FNumberClass> fNumbers,
      String source) {
    Optional<FlatnessLimit> limit =
        figures.stream()
            .findFirst()
            .map(main -> new FlatnessLimit(main.straightedge(), main.gap(), source));
    return new Tolerance(id, name, false, limit, figures, enough, fNumbers, source);
  }

  /** Shortest span of DIN 18202. */
  public static final double LEAST_SPAN = 0.1;

  /** Whether any limit of a gap follows from it. */
  public boolean hasGap() {
    return spanNeeded || limit.isPresent();
  }

  /**
   * The limit of the gap under an edge of {@code span}, m; one that does not depend on the span
   * keeps its own edge.
   */
  public Optional<FlatnessLimit> at(double span) {
    return spanNeeded
        ? Optional.of(new FlatnessLimit(span, Din18202.limit(line(), span), source))
        : limit;
  }

  /**
   * The figures that a floor is held against; of one that depends on the span that of {@code span}.
   */
  public List<GapLimit> figuresAt(double span) {
    return spanNeeded ? at(span).map(GapLimit::everywhere).stream().toList() : figures;
  }

  /** The figures under edges shorter than that of the main one. */
  public List<GapLimit> shorterEdges() {
    return figures.stream()
        .filter(figure -> figure.straightedge() < figures.get(0).straightedge())
        .toList();
  }

  /** The largest gap allowed between contacts {@code span} apart, m; {@code usual} if fixed. */
  public double allowed(double span, double usual) {
    return spanNeeded ? Din18202.limit(line(), Math.max(span, LEAST_SPAN)) : usual;
  }

  private int line() {
    return id.charAt(id.length() - 1) - '0';
  }
}
