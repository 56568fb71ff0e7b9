package dev.fillplane.plan;

import java.util.List;

/** The methods behind the pour, what guides it, how flat it gets, and what can hurt. */
final class PourMethods {

  static final List<Method> ALL =
      List.of(
          new Method(
              "ribbons",
              "Bays and passes; order, direction and width of ribbons",
              "rooms divided by moving joints, lower lifts and pockets first; travel toward the exit"
                  + " by weighed shares; the fullest ribbon takes one batch, within 0.30 to 0.45 m, from"
                  + " a hose 3 to 4.5 m; nobody is walled in",
              "own rules for travel and pockets, no source; widths and pockets first are "
                  + Method.TRADE,
              "a stop in every doorway"),
          new Method(
              "crew-run",
              "When each batch is mixed and placed",
              "a run of events: whoever gets free takes the most urgent work; the best of the ways"
                  + " of this and all smaller crews",
              Method.TRADE
                  + "; three people lay about 1,500 ft2 an hour by hand and 7,000 by pump"
                  + " (ProInstaller magazine, Sept-Oct 2021)",
              "mean times without breakdowns; up to four mixers"),
          new Method(
              "wet-edge",
              "Age of a wet edge",
              "placing of the batch that meets an edge minus first water of the batch that made it",
              "ASTM C1708 healing time as the limit, 25 % in reserve; " + Method.TRADE,
              "barrels and pump"),
          new Method(
              "pins-and-rails",
              "Depth pins and screed rails",
              "under 15 mm of mean depth pins 1.5 to 2 m apart, from there on rails as far apart as"
                  + " the screed is long less 0.2 m, as far as the pour is 10 mm deep, ripped to the"
                  + " shallowest place and packed up elsewhere",
              Method.TRADE,
              "bays of the last pass, by their mean depth"),
          new Method(
              "straightedge-gap",
              "Gap under a straightedge",
              "largest distance between the edge on two high points and the floor between them",
              "DIN 18202 and ASTM F710 as commonly described",
              "where less than the edge fits, one as long as what fits, down to 0.5 m; a kriged"
                  + " floor is smoother than the real one"),
          new Method(
              "f-numbers",
              "Flatness and levelness of measured lines",
              "FF = 4.57 / (3 Sq + |mean q|), FL = 12.5 / (3 Sz + |mean z|) in inches; together"
                  + " 1 / F^2 is the weighted mean of 1 / F^2, by count or between sections by area",
              "ASTM E1155; constants, S and combination from memory",
              "readings every 12 in or 300 mm, lines from 11 ft, sections from 320 ft2; FL not on"
                  + " suspended decks"),
          new Method(
              "flatness-verdict",
              "Whether the floor is flat enough, now and after the pour",
              "gap against each figure of the limit, within or over by 1.645 sqrt(1.5) deviations;"
                  + " after the pour that of a residual of 1.0 mm guided, 1.5 mm free",
              "DIN 18202, ANSI A108.02, ASTM F710, trade guideline; the residuals are "
                  + Method.TRADE,
              "the covering's own instructions come first"),
          new Method(
              "grind-and-patch",
              "What makes the floor flat without a pour",
              "grind over half the limit above each room's plane of least squares, fill under half"
                  + " the limit below it",
              "own rule, no source; grinding at 8 m2 an hour is " + Method.TRADE,
              "an estimate on the high side"),
          new Method(
              "next-pass",
              "What is to be done with a floor next",
              "ready, read more, grind and patch; pour where hollows cover a third of the floor or"
                  + " take as much as a skim of 2 mm",
              "own rule, no source; the skim is " + Method.TRADE,
              "floors of a survey, before a pour or after it"),
          new Method(
              "grinding-savings",
              "Bags that humps cost",
              "likely bags for the target less those for the same target brought down by 1, 2, 3"
                  + " or 5 mm (1 to 4 sixteenths of an inch), all that then stands too high ground",
              "differences of exact volumes; bags as in bags-odds",
              "steps that save a bag and grind at most a quarter of the floor"),
          new Method(
              "labour-rates",
              "Working time",
              "area / 30 m2/h cleaning + coats area / 80 m2/h priming + edge / 25 m/h sealing +"
                  + " ground area / 8 m2/h grinding + people times pouring + 1 h washing up",
              Method.TRADE,
              "without waiting; of low confidence"),
          new Method(
              "lifting-equation",
              "Recommended mass of a lift",
              "RWL = LC HM VM DM AM FM CM, in its inch-pound form",
              "NIOSH publication 94-110, revised 2021",
              "two-handed lifts of stable loads; not carrying, not mixed buckets, which are held"
                  + " against the filter of 25 kg of HSE L23"),
          new Method(
              "dust-controls",
              "Air of a shroud, filter and respirator against quartz dust",
              "airflow = 25 cfm for an inch of wheel; filter of 99 %; APF 10 indoors over 4 h at the"
                  + " area an hour of the request; HEPA vacuum or wet for cleaning",
              "29 CFR 1926.1153 table 1, grinders; limits of it, Directive (EU) 2017/2398, HSE EH40",
              "the table of the US; opening bags and mixing are not in it and need an assessment"),
          new Method(
              "added-load",
              "Load of the pour and of the pallet on the floor",
              "depth times wet density times 9.80665 m/s2; bags over a pallet of 1.2 m by 0.8 m",
              "IRC table R301.5 for 40 psf; 10 psf is a common design value; 20 kg/m2 on wood is "
                  + Method.TRADE,
              "a prompt to ask a licensed engineer, not a check of the structure"),
          new Method(
              "joist-sag",
              "How far the wet pour bends joists, and the bags in the bow",
              "span / 360 times load over 40 psf in the middle; 16/25 of it in the mean, by which the"
                  + " yield of a bag is lessened",
              "IRC tables R301.5 and R301.7; beam under an even load",
              "joists that just meet L/360 at 40 psf, an assumption; rooms of wood"),
          new Method(
              "engineer-thresholds",
              "When to stop and ask a licensed engineer",
              "wood of unknown joists; over 25 mm on wood; sag over L/240; stone at min(L/720, 7/32"
                  + " in); tile at L/360 under the whole load, joists 16 in apart; damaged joists,"
                  + " concentrated loads, post-tensioned slabs, moving cracks",
              "IRC table R301.7; tile council and marble institute as quoted by a joist maker (2003);"
                  + " the others are judgement, no source",
              "a prompt to ask, not a check of the structure"),
          new Method(
              "noise-dose",
              "Noise of mixers and grinders over a day",
              "dose = sum of hours over T, T = 8 / 2^((L - 90) / 5) h; level of a day = 10 log10 of"
                  + " the mean of 10^(L / 10) over 8 h",
              "29 CFR 1926.52 table D-2; action levels of 80 and 85 dBA (EU, UK, NIOSH) from memory;"
                  + " levels of tools are "
                  + Method.TRADE,
              "one person beside all of it"),
          new Method(
              "heat-index",
              "How hot moist air feels to people at work",
              "regression of Rothfusz with two adjustments; moderate from 91 F, high from 103 F",
              "US National Weather Service SR 90-23, OSHA guidance (both from memory)",
              "in the shade, where the humidity is told; else 30 C of air, " + Method.TRADE),
          new Method(
              "old-floors",
              "Whether flooring, backing and adhesive may hold asbestos, or paint lead",
              "year against that of the country, by kind of covering; unknown is a stop until tested",
              "29 CFR 1926.1101(k) (1980), UK practice (2000), EU directive 1999/77/EC (2005, from"
                  + " memory), 40 CFR 745 (1978)",
              "a reason to test, never a proof that nothing is there"),
          new Method(
              "hazards-of-the-place",
              "Notes on wet mix, rinsing, wash water, fire, fumes, power, hot tools, openings, bases",
              "each has a value or a condition of the request behind it and names its basis",
              "CLP and REACH XVII 47, 29 CFR 1926.50(g), 1926.154, 1926.404, ISO 8502-4, ANSI Z358.1"
                  + " (from memory); "
                  + Method.TRADE,
              "severity by the signal words of ANSI Z535; local code and licensed practice decide"));

  private PourMethods() {}
}
