package dev.fillplane.web;

import dev.fillplane.finding.Finding;
import dev.fillplane.finding.Place;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.trace.Trace;
import dev.fillplane.web.json.Sentences;
import dev.fillplane.web.json.Words;
import dev.fillplane.web.watch.Note;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * An error as it leaves the service (RFC 9457).
 *
 * @param type stable name of the kind of problem
 * @param title the kind in words
 * @param status the HTTP status
 * @param detail what happened here
 * @param requestId id of the request, to ask about
 * @param traceId id of the trace that the request is part of
 * @param errors every finding, the first {@link #SHOWN}
 * @param more how many findings are not shown
 */
public record Problem(
    String type,
    String title,
    int status,
    String detail,
    Optional<String> requestId,
    Optional<String> traceId,
    List<Fault> errors,
    OptionalInt more) {

  /** How many findings a problem shows. */
  public static final int SHOWN = 100;

  private static final String TYPES = "urn:fillplane:problem:";

  /** One finding of a problem. */
  public record Fault(String code, String pointer, String detail) {

    static Fault of(Finding finding, UnitSystem units) {
      return new Fault(
          finding.code(),
          finding.place().toString(),
          Sentences.of(finding.code(), finding.values(), units));
    }

    /** The same where the request is part of another. */
    Fault under(Place place) {
      return new Fault(code, place + pointer.substring(1), detail);
    }
  }

  /** A problem without findings. */
  static Problem of(Kind kind, String detail) {
    return of(kind, detail, List.of());
  }

  /** A problem with findings, of which the first are shown. */
  static Problem of(Kind kind, String detail, List<Fault> errors) {
    int hidden = errors.size() - SHOWN;
    return new Problem(
        TYPES + kind.word(),
        kind.title(),
        kind.status(),
        detail,
        Optional.empty(),
        Optional.empty(),
        errors.subList(0, Math.min(SHOWN, errors.size())),
        hidden > 0 ? OptionalInt.of(hidden) : OptionalInt.empty());
  }

  /** The same as it ends a request. */
  Problem forRequest(String id, Trace trace) {
    return new Problem(
        type, title, status, detail, Optional.of(id), Optional.of(trace.id()), errors, more);
  }

  /** The same as it ends the request of a note. */
  Problem forRequest(Note note) {
    return forRequest(note.id(), note.trace());
  }

  /** The kind in a word. */
  String kind() {
    return type.substring(TYPES.length());
  }

  /** The kinds of problem that the service can answer. */
  enum Kind {
    NOT_JSON(400, "The body is not JSON"),
    BAD_REQUEST(400, "The request cannot be read"),
    NO_KEY(401, "A valid key is needed"),
    FORBIDDEN(403, "This is not allowed"),
    NOT_FOUND(404, "There is nothing at this path"),
    METHOD_NOT_ALLOWED(405, "This path does not take this method"),
    NOT_ACCEPTABLE(406, "The answer is not offered in that media type"),
    TIMED_OUT(408, "The request took too long to arrive"),
    STILL_RUNNING(409, "A request with this Idempotency-Key is still being taken"),
    TOO_LARGE(413, "The body is too large"),
    PATH_TOO_LONG(414, "The path is too long"),
    UNSUPPORTED_MEDIA_TYPE(415, "The body is not of a media type that is read here"),
    INVALID(422, "The request does not fit the contract"),
    UNANSWERABLE(422, "The request makes no sense as it is"),
    KEY_REUSED(422, "This Idempotency-Key was used for another request"),
    TOO_MANY_REQUESTS(429, "Too many requests"),
    HEADERS_TOO_LARGE(431, "The headers are too large"),
    FAILED(500, "The service failed"),
    BUSY(503, "The service is busy"),
    OVER_DEADLINE(503, "The calculation took too long"),
    NO_STORE(503, "Jobs cannot be kept at the moment");

    private final int status;
    private final String title;

    Kind(int status, String title) {
      this.status = status;
      this.title = title;
    }

    int status() {
      return status;
    }

    String title() {
      return title;
    }

    String word() {
      return Words.of(this);
    }
  }
}
