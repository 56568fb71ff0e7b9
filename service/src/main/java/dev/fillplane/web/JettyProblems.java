package dev.fillplane.web;

import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Json;
import dev.fillplane.web.watch.Note;
import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/** Answers as problem documents what the HTTP server refuses before any route is looked up. */
final class JettyProblems implements Request.Handler {

  @Override
  public boolean handle(Request request, Response response, Callback callback) {
    Note note = Note.of(request);
    Problem problem = problem(response.getStatus()).forRequest(note);
    note.problem(problem.kind());
    response.setStatus(problem.status());
    response.getHeaders().put(HttpHeader.CONTENT_TYPE, Problems.MEDIA_TYPE);
    response.getHeaders().put(RequestIds.HEADER, note.id());
    response.getHeaders().put(RequestIds.TRACE, note.trace().parent());
    if (problem.status() == 503) {
      response.getHeaders().put(HttpHeader.RETRY_AFTER, "5");
    }
    byte[] body = Json.bytes(problem, UnitSystem.METRIC);
    response.write(true, ByteBuffer.wrap(body), callback);
    return true;
  }

  private static Problem problem(int status) {
    return switch (status) {
      case 404 -> Problem.of(Problem.Kind.NOT_FOUND, "See /openapi.yaml.");
      case 408 -> Problem.of(Problem.Kind.TIMED_OUT, "Send the request faster.");
      case 414 -> Problem.of(Problem.Kind.PATH_TOO_LONG, "See /openapi.yaml for the paths.");
      case 431 -> Problem.of(Problem.Kind.HEADERS_TOO_LARGE, "Send fewer or shorter headers.");
      // A version or a coding of transfer that nobody uses is no fault of the service.
      case 501, 505 -> Problem.of(Problem.Kind.BAD_REQUEST, "Send the request by HTTP/1.1.");
      case 503 -> Problem.of(Problem.Kind.BUSY, "The service is starting or stopping.");
      default ->
          status < 500
              ? Problem.of(Problem.Kind.BAD_REQUEST, "The request is not proper HTTP.")
              : Problem.of(Problem.Kind.FAILED, "This is a fault of the service.");
    };
  }
}
