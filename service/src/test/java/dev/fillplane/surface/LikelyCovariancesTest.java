package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

class LikelyCovariancesTest {

  /** Three places tell a plane and nothing more: what is left is the prior about 3 mm. */
  @Test
  void threePlacesLeaveThePrior() {
    Spots three =
        Floors.spots(new double[] {0, 6, 0}, new double[] {0, 0, 5}, new double[] {0, 0.02, 0});
    List<Variogram> likely = likely(three);
    assertEquals(LikelyCovariances.COUNT, likely.size());
    double product = 1;
    for (Variogram variogram : likely) {
      product *= Math.pow(variogram.sill() / CovarianceFit.USUAL_SILL, 1.0 / likely.size());
    }
    assertEquals(1, product, 0.8);
    assertTrue(most(likely) > 8 * least(likely));
  }

  /** A Gaussian floor of sill (4 mm)^2 and range 2 m at 60 places. */
  @Test
  void manyPlacesFindTheRoughnessAndNarrowIt() {
    double truth = 1.6e-5 / Math.pow(2, 3);
    Spots places = Floors.scattered(60, 5, (x, y) -> 0);
    Spots spots = Floors.drawn(places, VariogramShape.MATERN_3_2, 1.6e-5, 2, 8);
    List<Variogram> likely = likely(spots);
    assertTrue(roughness(likely.get(0)) > truth / 6, "least " + roughness(likely.get(0)));
    assertTrue(roughness(likely.get(3)) < truth * 6, "most " + roughness(likely.get(3)));
  }

  @Test
  void middleOfThemIsNearTheBestFit() {
    Spots places = Floors.scattered(60, 5, (x, y) -> 0);
    Spots spots = Floors.drawn(places, VariogramShape.MATERN_3_2, 1.6e-5, 2, 8);
    double best =
        roughness(KrigedSurface.fit(spots, SurfaceWish.usual()).summary().variogram().get());
    List<Variogram> likely = likely(spots);
    assertTrue(roughness(likely.get(0)) < best);
    assertTrue(roughness(likely.get(likely.size() - 1)) > best);
  }

  /** What the search for the best one has worked out already is not another answer. */
  @Test
  void rangesThatTheFitLookedAtGiveTheSame() {
    Spots spots = Floors.scattered(30, 2, Floors::bumpy);
    KrigedSurface fitted = KrigedSurface.fit(spots, SurfaceWish.usual());
    List<Variogram> anew = likely(spots);
    for (int i = 0; i < anew.size(); i++) {
      assertEquals(anew.get(i).range(), fitted.likely().get(i).range(), 0);
    }
  }

  @Test
  void givenVariogramStandsAlone() {
    KrigedSurface surface =
        KrigedSurface.fit(
            Floors.scattered(12, 1, Floors::bumpy),
            Floors.given(VariogramShape.SPHERICAL, 1e-6, 4e-6, 3));
    assertEquals(List.of(surface), surface.likely());
  }

  @Test
  void manyPlacesStandAlone() {
    int most = LikelyCovariances.MOST_PLACES;
    KrigedSurface more =
        KrigedSurface.fit(Floors.scattered(most + 1, 1, Floors::bumpy), SurfaceWish.usual());
    KrigedSurface fewer =
        KrigedSurface.fit(Floors.scattered(most, 1, Floors::bumpy), SurfaceWish.usual());
    assertEquals(List.of(more), more.likely());
    assertEquals(LikelyCovariances.COUNT, fewer.likely().size());
  }

  private static List<Variogram> likely(Spots spots) {
    LocalSpots local = LocalSpots.of(spots);
    Spacing spacing = Spacing.of(local.x(), local.y());
    DriftTerms terms = DriftTerms.of(Drift.LINEAR, spacing.extent());
    return LikelyCovariances.of(new RangeLikelihoods(local, terms), spacing);
  }

  private static double roughness(Variogram variogram) {
    return variogram.sill() / Math.pow(variogram.range(), 3);
  }

  private static double least(List<Variogram> likely) {
    return likely.stream().map(Variogram::sill).min(Comparator.naturalOrder()).orElseThrow();
  }

  private static double most(List<Variogram> likely) {
    return likely.stream().map(Variogram::sill).max(Comparator.naturalOrder()).orElseThrow();
  }
}
