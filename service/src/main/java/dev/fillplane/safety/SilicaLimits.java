package dev.fillplane.safety;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Limits of respirable crystalline silica. */
final class SilicaLimits {

  private static final double MICROGRAM = 1e-9;

  private static final List<ExposureLimit> ALL =
      List.of(
          limit(Jurisdiction.US, LimitKind.LIMIT, 50, 8, "29 CFR 1926.1153(c)"),
          limit(Jurisdiction.US, LimitKind.ACTION_LEVEL, 25, 8, "29 CFR 1926.1153(b)"),
          limit(Jurisdiction.US, LimitKind.RECOMMENDED, 50, 10, "NIOSH"),
          limit(Jurisdiction.US, LimitKind.RECOMMENDED, 25, 8, "ACGIH, from memory"),
          limit(Jurisdiction.EU, LimitKind.LIMIT, 100, 8, "Directive (EU) 2017/2398, Annex III"),
          limit(Jurisdiction.UK, LimitKind.LIMIT, 100, 8, "HSE EH40"));

  private SilicaLimits() {}

  /** Those of one jurisdiction, or all of them. */
  static List<ExposureLimit> of(Optional<Jurisdiction> jurisdiction) {
    return ALL.stream()
        .filter(limit -> jurisdiction.isEmpty() || jurisdiction.get() == limit.jurisdiction())
        .toList();
  }

  /** The binding ones of {@link #of} in a phrase. */
  static String text(Optional<Jurisdiction> jurisdiction) {
    return of(jurisdiction).stream()
        .filter(limit -> limit.kind() != LimitKind.RECOMMENDED)
        .map(SilicaLimits::text)
        .collect(Collectors.joining("; ", "Respirable crystalline silica, mean of 8 h: ", ""));
  }

  private static String text(ExposureLimit limit) {
    String kind = limit.kind() == LimitKind.ACTION_LEVEL ? " action level " : " limit ";
    long micrograms = Math.round(limit.concentration() / MICROGRAM);
    return limit.jurisdiction() + kind + micrograms + " ug/m3 (" + limit.basis() + ")";
  }

  private static ExposureLimit limit(
      Jurisdiction jurisdiction, LimitKind kind, double micrograms, double hours, String basis) {
    return new ExposureLimit(jurisdiction, kind, micrograms * MICROGRAM, hours, basis);
  }
}
