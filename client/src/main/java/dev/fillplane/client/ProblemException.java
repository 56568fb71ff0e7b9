package dev.fillplane.client;

import java.net.URI;
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

  private final transient ProblemDocument document;

  ProblemException(ProblemDocument document, Throwable cause) {
    super(document.sentence(), cause);
    this.document = document;
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

  /** What was found wrong with the request, in the service's order. */
  public List<Problem> errors() {
    return document.errors();
  }

  /** How many findings were left out of {@link #errors}. */
  public int more() {
    return document.more();
  }
}
