package dev.fillplane.survey;

import dev.fillplane.finding.Findings;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;

/**
 * Solves for the planes with their tilts, or without them where that cannot be done, and warns
 * where nothing shows whether the lasers were level.
 */
final class TiltCheck {

  /** A tilt is seen where its deviation falls below this share of what it was beforehand. */
  private static final double SEEN = 0.95;

  /** A height below the usual error of placing is not worth a word (common practice, no source). */
  private static final double LEAST = 0.0005;

  private final Network network;
  private final Lasers lasers;
  private final Place place;
  private final Findings findings;

  TiltCheck(Network network, Lasers lasers, Place place, Findings findings) {
    this.network = network;
    this.lasers = lasers;
    this.place = place;
    this.findings = findings;
  }

  PlaneEquations solve(SpanningTree tree, PointPositions positions) {
    try {
      PlaneEquations planes = new PlaneEquations(network, tree, positions, lasers, true);
      if (lasers.tooMany()) {
        findings.warning("tilt-left-out", place);
      }
      warnOfTheUnseen(planes);
      return planes;
    } catch (NonPositiveDefiniteMatrixException e) {
      findings.warning("tilt-left-out", place);
      return new PlaneEquations(network, tree, positions, lasers, false);
    }
  }

  private void warnOfTheUnseen(PlaneEquations planes) {
    int[] tilted = IntStream.range(0, network.setups()).filter(planes::tilts).toArray();
    double reach = IntStream.of(tilted).mapToDouble(lasers::reach).max().orElse(0);
    boolean seen =
        IntStream.of(tilted)
            .anyMatch(setup -> planes.sharperTilt(setup) < SEEN * lasers.deviation());
    if (!seen && reach * lasers.deviation() > LEAST) {
      findings.warning(
          "tilt-unseen",
          place,
          "tilt",
          Amount.of(lasers.deviation(), Dimension.SLOPE),
          "distance",
          Amount.of(reach, Dimension.PLAN),
          "off",
          Amount.of(reach * lasers.deviation(), Dimension.HEIGHT));
    }
  }
}
