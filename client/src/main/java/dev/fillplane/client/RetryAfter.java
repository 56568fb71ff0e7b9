package dev.fillplane.client;

import java.net.http.HttpHeaders;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The {@code Retry-After} of an answer (RFC 9110 section 10.2.3): seconds, or a date in one of the
 * three forms of section 5.6.7. What is neither is as good as none.
 */
final class RetryAfter {
  private static final int LONGEST_DIGITS = 9;

  private RetryAfter() {}

  static Optional<Duration> of(HttpHeaders headers, Instant now) {
    return headers.firstValue("Retry-After").map(String::strip).flatMap(text -> read(text, now));
  }

  static Optional<Duration> read(String text, Instant now) {
    if (text.matches("\\d{1," + LONGEST_DIGITS + "}")) {
      return Optional.of(Duration.ofSeconds(Long.parseLong(text)));
    }
    return date(text, now)
        .map(then -> then.isAfter(now) ? Duration.between(now, then) : Duration.ZERO);
  }

  private static Optional<Instant> date(String text, Instant now) {
    for (DateTimeFormatter form : forms(now)) {
      try {
        return Optional.of(Instant.from(form.parse(text)));
      } catch (DateTimeException e) {
        // One of the other forms, or none.
      }
    }
    return Optional.empty();
  }

  private static List<DateTimeFormatter> forms(Instant now) {
    LocalDate fiftyYearsAgo = now.atOffset(ZoneOffset.UTC).toLocalDate().minusYears(50);
    DateTimeFormatter twoDigitYear =
        new DateTimeFormatterBuilder()
            .appendPattern("EEEE, dd-MMM-")
            .appendValueReduced(ChronoField.YEAR, 2, 2, fiftyYearsAgo)
            .appendPattern(" HH:mm:ss 'GMT'")
            .toFormatter(Locale.ENGLISH);
    return List.of(
        DateTimeFormatter.RFC_1123_DATE_TIME,
        twoDigitYear.withZone(ZoneOffset.UTC),
        DateTimeFormatter.ofPattern("EEE MMM ppd HH:mm:ss yyyy", Locale.ENGLISH)
            .withZone(ZoneOffset.UTC));
  }
}
