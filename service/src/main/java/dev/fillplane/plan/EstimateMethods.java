package dev.fillplane.plan;

import java.util.List;

/** The methods behind the lines of an estimate. */
final class EstimateMethods {

  static final List<Method> ALL =
      List.of(
          new Method(
              "line-amounts",
              "Quantities, packs and amounts of lines",
              "order = (quantity + waste + reserve, each rounded up) in whole packs; amount = order"
                  + " times the price at that order, half up; totals are sums of amounts",
              "own choice of rounding; exact decimals",
              "a price break holds for the whole order"),
          new Method(
              "line-waste",
              "Bags in the floor, lost and in reserve; consumables",
              "in the floor = likely (1 - residue) / (1 + waste), rounded up; lost = likely less"
                  + " that; reserve = order less likely; consumables by floor, edge and dust",
              Method.TRADE + ", of low confidence",
              "5 % of the strip and 10 % of what else is cut is waste"),
          new Method(
              "visits-and-half-days",
              "Hours on site, return visits and hire",
              "each person's time at each visit, in half days rounded up; a visit for a barrier,"
                  + " for each further layer, and one of one person after the pour",
              Method.TRADE + ", of low confidence",
              "work beside the pour by rates, the pour by crew-run with its waiting"));

  private EstimateMethods() {}
}
