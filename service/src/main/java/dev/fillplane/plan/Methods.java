package dev.fillplane.plan;

import java.util.List;

/** Every method that a plan uses, with its source; docs/formulas.md says the same at length. */
public final class Methods {

  private static final String TRADE = "common practice, no source";

  private static final List<Method> ALL =
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
              "12 mm sqrt(loop in km), or 5 mm sqrt(setups), or the caller's limit; among many loops"
                  + " over the same setups what the largest reaches by chance",
              "third-order levelling; building practice; Bonferroni's bound, own use",
              "loops of setups"),
          new Method(
              "survey-ties",
              "Agreement of setups on shared points",
              "mean difference after the adjustment, held to 1.5 mm or 3 deviations of the mean of"
                  + " as many differences of readings",
              TRADE,
              "setups that hang together by more than their shared points"),
          new Method(
              "laser-tilt",
              "Planes that are not quite level",
              "reading = plane + tiltX (x - laser x) + tiltY (y - laser y) - elevation; tilts are 0"
                  + " beforehand with their deviation",
              "least squares with observations beforehand; 0.1 mm/m is " + TRADE,
              "readings with places within 500 m, at most 300 setups; else level"),
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
              "restricted maximum likelihood over a grid of sill and range, matern-3-2",
              "Patterson and Thompson, Biometrika 58 (1971); from memory",
              "8 readings or more; fewer use a stated covariance"),
          new Method(
              "volume-odds",
              "How sure the volume is",
              "quantiles over conditional realisations, each clipped and integrated",
              "Chiles and Delfiner, Geostatistics; from memory",
              "the survey alone; errors of placing and material come with the bags"),
          new Method(
              "target-level",
              "The level target",
              "highest point of floor and readings + minimum depth",
              TRADE,
              "any floor"),
          new Method(
              "target-plane",
              "The plane of least fill",
              "least mean elevation with the minimum depth kept and the slope limited; linear"
                  + " program in 3 unknowns",
              "linear programming; the slope limit of 2 mm/m is " + TRADE,
              "slopes to 5 mm/m"),
          new Method(
              "volume-prism",
              "Volume between floor and target",
              "sum of clipped prisms A (d1 + d2 + d3) / 3 over the triangles of the floor",
              "plane surveying, truncated triangular prism; exact for the piecewise-linear floor",
              "any outline"),
          new Method(
              "bags-odds",
              "Bags with their odds",
              "(volume + (placing + texture) area) (1 + residue) (1 + waste) / yield, each with its"
                  + " own error",
              TRADE,
              "neat underlayment without aggregate"),
          new Method(
              "yield-mass-balance",
              "Fresh underlayment in a bag",
              "(bag + water) / wet density",
              "conservation of mass, no air",
              "sheets that give a wet density"),
          new Method(
              "primer-coverage",
              "Primer",
              "area / coverage by absorbency, again between lifts",
              TRADE,
              "primers bought ready or undiluted"),
          new Method(
              "mix-heat-balance",
              "Temperature of the mix",
              "T = sum(c m T) / sum(c m), c = 0.22 for powder and aggregate and 1 for water",
              "US Army and Air Force TM 5-852-4, equation 16",
              "liquid water; mixing adds 2 K (" + TRADE + ")"),
          new Method(
              "working-time-arrhenius",
              "Working and healing time on this floor",
              "equivalent age, 40 kJ/mol, from the sheet's time at its temperature to the mix and"
                  + " then toward the slab",
              "ASTM C1074, constants from memory; an estimate for blended binders, the sheet"
                  + " governs",
              "inside the sheet's temperatures; cold is credited with at most 1.25 times"),
          new Method(
              "crew-rate",
              "Batches a minute",
              "1 / longest stage of measuring, mixing, carrying and spreading",
              TRADE + "; 25 to 30 bags an hour with one mixer and 2-bag barrels",
              "barrels and buckets, no pump"),
          new Method(
              "wet-edge",
              "Age of a wet edge",
              "time at which a ribbon is met again minus first water of the batch that made it",
              "ASTM C1708 healing time as the limit, 25 % in reserve; " + TRADE,
              "pours by hand"),
          new Method(
              "straightedge-gap",
              "Gap under a straightedge",
              "largest distance between the edge on two high points and the floor between them",
              "DIN 18202 and ASTM F710 as commonly described",
              "edges not longer than the floor; a kriged floor is smoother than the real one"),
          new Method(
              "lifting-equation",
              "Recommended mass of a lift",
              "RWL = LC HM VM DM AM FM CM, in its inch-pound form",
              "NIOSH publication 94-110, revised 2021",
              "two-handed lifts of stable loads; not carrying, not mixed buckets"),
          new Method(
              "drying-times",
              "When the floor may be used",
              "the sheet's times, longer by Arrhenius when colder; tests by area",
              "the data sheet; ASTM F2170 for the number of tests",
              "the sheet's temperatures"));

  private Methods() {}

  /** All of them. */
  public static List<Method> all() {
    return ALL;
  }

  /** Their ids. */
  public static List<String> ids() {
    return ALL.stream().map(Method::id).toList();
  }
}
