package dev.fillplane.web.watch;

import dev.fillplane.trace.Trace;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.server.Request;

/**
 * What is written down about one request on its way, for its line in the log and for the numbers.
 * Several threads may write, one after the other.
 */
public final class Note {

  /** The header with the id of a request. */
  public static final String ID = "X-Request-Id";

  private static final String ATTRIBUTE = "dev.fillplane.note";
  private static final String PLAIN = "[A-Za-z0-9._-]{1,64}";

  private final String id;
  private final Trace trace;
  private final AtomicInteger lines = new AtomicInteger();
  private volatile Optional<String> route = Optional.empty();
  private volatile Optional<String> key = Optional.empty();
  private volatile Optional<String> problem = Optional.empty();
  private volatile WorkSize size = WorkSize.NONE;

  private Note(HttpFields headers) {
    String told = headers.get(ID);
    id = told != null && told.matches(PLAIN) ? told : UUID.randomUUID().toString();
    List<String> parents = headers.getValuesList(Trace.PARENT);
    List<String> states = headers.getValuesList(Trace.STATE);
    trace =
        Trace.of(
            parents.size() == 1 ? Optional.of(parents.get(0)) : Optional.empty(),
            states.isEmpty() ? Optional.empty() : Optional.of(String.join(",", states)));
  }

  /** The note of a request; begun where there is none. */
  public static Note of(Request request) {
    if (request.getAttribute(ATTRIBUTE) instanceof Note known) {
      return known;
    }
    Note note = new Note(request.getHeaders());
    request.setAttribute(ATTRIBUTE, note);
    return note;
  }

  /** The note of a request; begun where there is none. */
  public static Note of(Context context) {
    return of(ServletContextRequest.getServletContextRequest(context.req()));
  }

  /** The id of the request: the caller's own where it is a plain word. */
  public String id() {
    return id;
  }

  /** Our part of the trace of the request. */
  public Trace trace() {
    return trace;
  }

  /** The path of the contract that takes the request. */
  public Optional<String> route() {
    return route;
  }

  /** The id of the caller's key. */
  public Optional<String> key() {
    return key;
  }

  /** The kind of problem that ended the request. */
  public Optional<String> problem() {
    return problem;
  }

  /** How large the work was. */
  public WorkSize size() {
    return size;
  }

  /** Lines of a stream that were answered. */
  public int lines() {
    return lines.get();
  }

  /** Notes which path of the contract takes the request. */
  public void route(String path) {
    route = Optional.of(path);
  }

  /** Notes whose key it is. */
  public void key(String keyId) {
    key = Optional.of(keyId);
  }

  /** Notes the kind of problem that ends the request. */
  public void problem(String kind) {
    problem = Optional.of(kind);
  }

  /** Notes how large the work was. */
  public void size(WorkSize done) {
    size = done;
  }

  /** Counts a line of a stream. */
  public void line() {
    lines.incrementAndGet();
  }
}
