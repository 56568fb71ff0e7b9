package dev.fillplane.trace;

import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Our part of a trace, as W3C Trace Context tells it.
 *
 * @param id of the whole trace, 32 digits; kept as the caller tells it
 * @param span id of our part, 16 digits
 * @param flags what the caller says of recording, 2 digits
 * @param state what other systems say of the trace, handed on as it came
 */
public record Trace(String id, String span, String flags, Optional<String> state) {

  /** Name of the header that tells a trace, and of the one with what other systems say of it. */
  public static final String PARENT = "traceparent";

  /** See {@link #PARENT}. */
  public static final String STATE = "tracestate";

  private static final String VERSION = "00";
  private static final int LENGTH = 55;
  private static final Pattern TOLD =
      Pattern.compile("([0-9a-f]{2})-([0-9a-f]{32})-([0-9a-f]{16})-([0-9a-f]{2})(-.*)?");

  /** A trace that begins here; nobody asked to record it. */
  public static Trace begin() {
    return new Trace(digits() + digits(), digits(), "00", Optional.empty());
  }

  /**
   * Our part of the trace of a caller; a trace of its own where the caller tells none, or one that
   * is not written as the standard wants it.
   *
   * @param parent the header {@link #PARENT}, if it came once
   * @param state the headers {@link #STATE}, joined with commas
   */
  public static Trace of(Optional<String> parent, Optional<String> state) {
    return parent.flatMap(Trace::read).map(known -> known.with(state)).orElseGet(Trace::begin);
  }

  /** Of a version to come only what this one knows is read (section 3.2.4). */
  private static Optional<Trace> read(String told) {
    Matcher parts = TOLD.matcher(told);
    if (!parts.matches()
        || parts.group(1).equals("ff")
        || (parts.group(1).equals(VERSION) && told.length() != LENGTH)
        || zero(parts.group(2))
        || zero(parts.group(3))) {
      return Optional.empty();
    }
    return Optional.of(new Trace(parts.group(2), digits(), parts.group(4), Optional.empty()));
  }

  private static boolean zero(String digits) {
    return digits.chars().allMatch(digit -> digit == '0');
  }

  private Trace with(Optional<String> told) {
    return new Trace(id, span, flags, told.filter(TraceState::proper));
  }

  /** The part of the trace that follows ours. */
  public Trace next() {
    return new Trace(id, digits(), flags, state);
  }

  /** The header {@link #PARENT} for whom we call. */
  public String parent() {
    return VERSION + "-" + id + "-" + span + "-" + flags;
  }

  /** 16 digits, not all of them zero. */
  private static String digits() {
    return String.format("%016x", ThreadLocalRandom.current().nextLong(1, Long.MAX_VALUE));
  }
}
