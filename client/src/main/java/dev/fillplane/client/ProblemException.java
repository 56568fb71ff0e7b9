package dev.fillplane.client;

import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * The service refused a request or failed at it, and said why in a problem document (RFC 9457).
 *
 * <p>Where the answer held no such document (a proxy in between may answer so), {@link #type} is
 * {@code about:blank} and only {@link #status} tells more. The generated exception, with headers
 * and body, is the cause.
 */
public final class ProblemException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private static final String KINDS = "urn:fillplane:problem:";

  private final transient ProblemDocument document;
  private final Duration retryAfter;

  ProblemException(ProblemDocument document, Optional<Duration> retryAfter, Throwable cause) {
    super(document.sentence(), cause);
    this.document = document;
    this.retryAfter = retryAfter.orElse(null);
  }

  /**
   * The kind of problem as the service's documents name it, such as {@code invalid}, {@code
   * unanswerable}, {@code too-many-requests} or {@code busy}; empty where something else answered.
   */
  public Optional<String> kind() {
    String type = document.type().toString();
    return type.startsWith(KINDS) ? Optional.of(type.substring(KINDS.length())) : Optional.empty();
  }

  /** The kind of problem; its page explains it. */
  public URI type() {
    return document.type();
  }

  /** The kind of problem in a few words. */
  public String title() {
    return document.title();
  }

  /** The HTTP status. */
  public int status() {
    return document.status();
  }

  /** What happened this time. */
  public Optional<String> detail() {
    return document.detail();
  }

  /** Which occurrence this was. */
  public Optional<URI> instance() {
    return document.instance();
  }

  /** The id to give when asking about this answer. */
  public Optional<String> requestId() {
    return document.requestId();
  }

  /** How long the service asks to wait before the next attempt. */
  public Optional<Duration> retryAfter() {
    return Optional.ofNullable(retryAfter);
  }

  /** What was found wrong with the request, in the service's order. */
  public List<Problem> errors() {
    return document.errors();
  }

  /** How many findings were left out of {@link #errors}. */
  public int more() {
    return document.more();
  }
}
