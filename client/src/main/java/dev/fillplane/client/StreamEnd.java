package dev.fillplane.client;

import java.io.IOException;
import java.util.Set;

/**
 * How a stream ends before its time. A service that stops, is busy or tired of waiting says so in a
 * line, which then answers no request.
 */
final class StreamEnd {
  private static final String TIRED = "timed-out";
  private static final String NOT_WHOLE = "bad-request";
  private static final Set<String> ENDS = Set.of(TIRED, "busy", "too-many-requests");

  private StreamEnd() {}

  /** Throws the problem of a line where it ends the stream; others answer their request. */
  static void check(ProblemException problem) {
    String kind = problem.kind().orElse("");
    if (ENDS.contains(kind)) {
      throw problem;
    }
    if (kind.equals(NOT_WHOLE)) {
      throw broken(new IOException(problem));
    }
  }

  /** Whether the service waited too long for more. */
  static boolean isTired(RuntimeException failure) {
    return failure instanceof ProblemException problem
        && problem.kind().filter(TIRED::equals).isPresent();
  }

  static NoAnswerException broken(IOException cause) {
    return new NoAnswerException("The service's answer broke off.", cause);
  }
}
