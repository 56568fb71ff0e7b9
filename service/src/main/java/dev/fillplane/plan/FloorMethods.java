package dev.fillplane.plan;

import java.util.List;

/** The methods from readings to a volume. */
final class FloorMethods {

  static final List<Method> ALL =
      List.of(
          new Method(
              "survey-least-squares",
              "Elevations from readings",
              "reading = plane(setup) - elevation(point); weighted least squares, benchmarks held",
              "Ghilani and Wolf, Elementary Surveying; from memory",
              "every network in which each setup shares a point or has a benchmark"),
          new Method(
              "survey-misclosure",
              "Error round a loop of setups and what is allowed",
              "the caller's limit, else 12 mm sqrt(loop in km), else 5 mm sqrt(setups in the loop);"
                  + " among many loops over the same setups what the largest reaches by chance",
              "third-order levelling, Federal Geodetic Control Committee 1984, from memory; 5 mm is"
                  + " building practice",
              "loops of setups; benchmarks are joined by the ground"),
          new Method(
              "survey-ties",
              "Agreement of setups on shared points",
              "mean difference after the adjustment, held to 1.5 mm or 3 deviations of the mean of"
                  + " as many differences of readings",
              Method.TRADE,
              "setups that hang together by more than their shared points"),
          new Method(
              "laser-tilt",
              "Planes that are not quite level",
              "reading = plane + tiltX (x - laser x) + tiltY (y - laser y) - elevation; tilts are 0"
                  + " beforehand with their deviation",
              "least squares with observations beforehand; 0.1 mm/m is " + Method.TRADE,
              "readings with places within 500 m, at most 300 setups; else level"),
          new Method(
              "survey-suspects",
              "Readings that do not fit",
              "residual over 3 of its own standard deviations, against the other setups or against"
                  + " the surface that the other readings tell",
              "Baarda, without iteration, from memory; leave-one-out by Dubrule, Mathematical"
                  + " Geology 15 (1983)",
              "one wrong reading at a time; its neighbours may be named as well"),
          new Method(
              "surface-kriging",
              "The floor between readings",
              "best linear unbiased prediction with a planar drift; the nugget is the reading's"
                  + " error and is not reproduced",
              "Cressie, Statistics for Spatial Data; from memory. Checked against gstat 2.x",
              "3 to 2,000 readings; outside them the deviation grows"),
          new Method(
              "surface-reml",
              "Sill and range of the floor",
              "restricted maximum likelihood over a grid of sill and range, refined; matern-3-2",
              "Patterson and Thompson, Biometrika 58 (1971); from memory",
              "readings at 8 places or more; fewer use a sill of (3 mm)^2 and a range of 3 m"),
          new Method(
              "surface-step",
              "A line across which the floor may jump",
              "one drift column of -1/2 and +1/2 to the right and the left of the line, in the rooms"
                  + " that it cuts",
              "generalised least squares, as the drift of kriging; own use",
              "one jump a step; kriging only; the grid shows it as a ramp within one cell"),
          new Method(
              "surface-dense",
              "The floor between many readings",
              "natural neighbours by stolen areas, or the planes of Delaunay triangles; outside"
                  + " the hull on from its nearest place along the least-squares plane",
              "Sibson 1981; from memory. Checked against CGAL 5.5.1 and SciPy 1.17.1",
              "3 to 1,000,000 readings; chosen unasked over 2,000"),
          new Method(
              "volume-odds",
              "How sure the volume is",
              "quantiles over 200 conditional realisations, each clipped and integrated; drawn from"
                  + " 4 covariances by restricted likelihood times a prior, or from the one told",
              "Chiles and Delfiner, Geostatistics; from memory",
              "the survey alone; errors of placing and material come with the bags"),
          new Method(
              "guard-height",
              "Height that keeps the floor from showing through",
              "quantile, at the confidence, of how far the floor of a realisation stands over the"
                  + " target; 0 where that is below it",
              "own derivation from the same realisations",
              "as far as the realisations hold; patches smaller than a cell are not seen"),
          new Method(
              "next-readings",
              "Where more readings help most",
              "one more reading at j takes (Ca)_j^2 / (C_jj + error^2) from the variance a'Ca of the"
                  + " volume; greedy, the best place first",
              "conditioning of a normal distribution; bags by adding the variances of survey,"
                  + " placing and yield",
              "the covariance of the surface; places at least 0.2 m from readings"),
          new Method(
              "target-level",
              "The level target",
              "highest point of floor and readings + minimum depth; with grinding the quantile of the"
                  + " floor by area at p / (p + q), prices of filling and grinding, + minimum depth",
              Method.TRADE + "; the quantile is own derivation",
              "any floor"),
          new Method(
              "target-plane",
              "The plane of least fill",
              "lowest at the centroid of the rooms with the minimum depth kept and the slope"
                  + " limited; linear program by cutting planes",
              "Kelley, J. SIAM 8 (1960); the slope limit of 2 mm/m is " + Method.TRADE,
              "slopes to 5 mm/m"),
          new Method(
              "target-cheapest",
              "The cheapest plane where the floor may be ground",
              "least p Int max(d, 0) + q Int max(-d, 0) over all planes within the limits, d the depth"
                  + " less the minimum; Newton steps, and tangents that bound the optimum to 1e-6",
              "Kelley, J. SIAM 8 (1960); slope and bend are own derivation; exact for the"
                  + " piecewise-linear floor",
              "grinding to 50 mm, slopes to 5 mm/m"),
          new Method(
              "target-fights",
              "Limits of a target that no plane keeps",
              "least largest miss of fixed heights and ceilings; the limits it touches that cannot be"
                  + " spared",
              "deletion filter, Chinneck and Dravnieks, ORSA J. Computing 3 (1991); from memory",
              "misses over 0.001 mm"),
          new Method(
              "volume-prism",
              "Volume between floor and target",
              "sum of clipped prisms A (d1 + d2 + d3) / 3 over the triangles of the floor",
              "plane surveying, truncated triangular prism; exact for the piecewise-linear floor",
              "any outline"));

  private FloorMethods() {}
}
