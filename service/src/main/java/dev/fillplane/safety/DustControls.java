package dev.fillplane.safety;

import dev.fillplane.finding.Remark;
import dev.fillplane.quantity.Amount;
import dev.fillplane.quantity.Dimension;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a task asks for, before the limits; parts as in {@link DustCheck}. */
record DustControls(
    OptionalDouble airflow,
    OptionalDouble filterEfficiency,
    Optional<Respirator> respirator,
    boolean assessment,
    List<Remark> controls,
    String basis) {

  private static final double FILTER = 0.99;

  /** What a HEPA filter holds (from memory). */
  static final double HEPA = 0.9997;

  /** Hours of a day up to which grinding by hand asks for no respirator. */
  static final int LONG_HOURS = 4;

  private static final int FACTOR = 10;

  private static final String HAND_GRINDING =
      "29 CFR 1926.1153 table 1, grinders held in the hands: shroud and collector with at least 25 cfm per inch of wheel,"
          + " filter 99 % or better with a pre-separator or cleaning; APF 10 indoors over 4 h, none"
          + " outdoors or up to 4 h (the last two from memory); medical surveillance where a respirator"
          + " is worn on 30 days of a year or more";

  private static final String FLOOR_GRINDING =
      "29 CFR 1926.1153 table 1, walk-behind grinders: water at the cutting surface, or the maker's collector with"
          + " the maker's airflow and a filter of 99 % or better with cleaning; indoors a HEPA"
          + " vacuum between passes; no respirator";

  private static final String BAG_MIXING =
      "Opening bags and mixing powder are not in table 1 of 29 CFR 1926.1153 (from memory): exposure"
          + " assessment under (d); ventilation, extraction and gentle handling: common practice, no"
          + " source";

  private static final String CLEAN_UP =
      "29 CFR 1926.1153(f): no dry sweeping or brushing and no compressed air where they add to the"
          + " exposure; HEPA filter 99.97 % (from memory)";

  /** Of a grinder held in the hands, with a wheel of {@code diameter}. */
  static DustControls handGrinding(double diameter, double hours, boolean indoors) {
    double airflow = Shroud.airflow(diameter);
    Remark shroud =
        Remark.of(
            "dust-shroud",
            "wheel",
            Amount.of(diameter, Dimension.HEIGHT),
            "airflow",
            Amount.of(airflow, Dimension.AIRFLOW));
    Remark place = Remark.of(indoors ? "dust-no-water-indoors" : "dust-water-outdoors");
    return new DustControls(
        OptionalDouble.of(airflow),
        OptionalDouble.of(FILTER),
        indoors && hours > LONG_HOURS ? Optional.of(new Respirator(FACTOR)) : Optional.empty(),
        false,
        List.of(shroud, filter(), place, Remark.of("dust-keep-out")),
        HAND_GRINDING);
  }

  /** Of a walk-behind grinder. */
  static DustControls floorGrinding(boolean indoors) {
    Remark machine = Remark.of("dust-collector-of-maker", "filter", percent(FILTER));
    Remark cleaning = filter();
    Remark out = Remark.of("dust-keep-out");
    return new DustControls(
        OptionalDouble.empty(),
        OptionalDouble.of(FILTER),
        Optional.empty(),
        false,
        indoors
            ? List.of(machine, cleaning, Remark.of("dust-vacuum-between-passes"), out)
            : List.of(machine, cleaning, out),
        FLOOR_GRINDING);
  }

  /** Of opening bags and mixing powder. */
  static DustControls bagMixing(boolean indoors) {
    Remark air = Remark.of(indoors ? "dust-extraction-at-mixer" : "dust-upwind");
    return new DustControls(
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        true,
        List.of(Remark.of("dust-assessment"), air, Remark.of("dust-open-bags-gently")),
        BAG_MIXING);
  }

  private static Remark filter() {
    return Remark.of("dust-filter-cleaning", "filter", percent(FILTER));
  }

  /** A share in percent, as people write it. */
  static String percent(double share) {
    return BigDecimal.valueOf(share).movePointRight(2).stripTrailingZeros().toPlainString();
  }

  /** Of cleaning. */
  static DustControls cleanUp() {
    return new DustControls(
        OptionalDouble.empty(),
        OptionalDouble.of(HEPA),
        Optional.empty(),
        false,
        List.of(
            Remark.of("dust-no-dry-sweeping"),
            Remark.of("dust-no-compressed-air"),
            Remark.of("dust-vacuum-or-wet")),
        CLEAN_UP);
  }
}
