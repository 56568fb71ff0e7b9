package dev.fillplane.plan;

import java.util.List;

/** The methods behind what must be on site, and the mix on its day. */
final class SupplyMethods {

  static final List<Method> ALL =
      List.of(
          new Method(
              "bags-odds",
              "Bags with their odds",
              "(volume + (placing + texture) wet area) (1 + waste) / (yield (1 - residue)), placing,"
                  + " texture, yield and waste each with its own error",
              Method.TRADE,
              "neat underlayment without aggregate"),
          new Method(
              "bag-drivers",
              "What makes the range of bags wide",
              "share of each source in the variance of the bags, to first order about the mean",
              "propagation of errors; the errors themselves are " + Method.TRADE,
              "small errors; the shares add up to 1"),
          new Method(
              "yield-mass-balance",
              "Fresh underlayment in a bag",
              "(bag + water) / wet density",
              "conservation of mass, no air",
              "sheets that give a wet density"),
          new Method(
              "primer-coverage",
              "Primer",
              "coats area / (reach coverage) by absorbency, again between lifts",
              Method.TRADE,
              "primers bought ready or undiluted"),
          new Method(
              "lifts",
              "Layers of a deep pour",
              "fewest layers that the sheet allows; the top one 0.4 of the largest layer where that"
                  + " leaves each its least and its largest, the rest shared by the lower ones",
              Method.TRADE + "; a lower layer fills the deep part only",
              "up to 20 layers; exact for the piecewise-linear floor"),
          new Method(
              "thin-area",
              "Where the pour is thinner than its least layer",
              "area and volume of 0 < depth < least; to grind: integral of max(least - depth, 0)",
              "own derivation",
              "exact for the piecewise-linear floor"),
          new Method(
              "aggregate-extension",
              "Aggregate in the deep part",
              "yield gain = share bag / (grain density yield); volume = part deeper than the least"
                  + " depth, less the neat cap",
              Method.TRADE + "; washed, dry aggregate",
              "sheets that allow it; an offer, not applied"),
          new Method(
              "seal-and-dams",
              "Perimeter seal and dams",
              "walls and islands less openings; dam = deepest of ends and middle + 10 mm",
              Method.TRADE,
              "openings told as straight lines"),
          new Method(
              "mix-heat-balance",
              "Temperature of the mix",
              "T = sum(c m T) / sum(c m), c = 0.22 for powder and aggregate and 1 for water; ice"
                  + " takes 79.6 K of its mass of water",
              "US Army and Air Force TM 5-852-4, equation 16; ice after ACI 305R, from memory",
              "water from 5 to 30 C; ice in concrete-like mixes only; mixing adds 2 K ("
                  + Method.TRADE
                  + ")"),
          new Method(
              "working-time-arrhenius",
              "Working and healing time on this floor",
              "equivalent age, 40 kJ/mol, from the sheet's time at its temperature to the mix and"
                  + " then toward the slab",
              "ASTM C1074, constants from memory; an estimate for blended binders, the sheet"
                  + " governs",
              "inside the sheet's temperatures; cold is credited with at most 1.25 times"),
          new Method(
              "drying-times",
              "When the floor may be used",
              "the sheet's times, longer by Arrhenius for the colder of air and floor; tests by"
                  + " area",
              "the data sheet; ASTM F2170 for the number of tests; 2 h of primer between lifts is "
                  + Method.TRADE,
              "the sheet's temperatures"),
          new Method(
              "dew-point",
              "Dew point of the air",
              "243.12 a / (17.62 - a), a = 17.62 T / (243.12 + T) + ln(humidity); the floor at least"
                  + " 3 K above it",
              "Magnus with the constants of the WMO; the 3 K are " + Method.TRADE,
              "-45 to 60 C"),
          new Method(
              "evaporation",
              "Water that leaves the fresh surface",
              "5 ((Ts + 18)^2.5 - humidity (Ta + 18)^2.5) (V + 4) 1e-6 kg/m2/h",
              "Uno, ACI Materials Journal 95-M34 (1998); the limits for thin pours are "
                  + Method.TRADE,
              "an estimate, good to about 40 %"));

  private SupplyMethods() {}
}
