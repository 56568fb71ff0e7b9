package dev.fillplane.web;

import dev.fillplane.web.key.Key;
import dev.fillplane.web.watch.Note;
import io.javalin.http.Context;
import java.util.Optional;

/**
 * Who makes a request.
 *
 * @param id id of the key, or {@code local} where the service asks for none
 * @param tenant whose work this is: what is kept is shown to the callers of its tenant only
 */
public record Caller(String id, String tenant) {

  /** Whoever calls a service without keys; never the id of a key. */
  public static final Caller LOCAL = new Caller("local", "local");

  private static final String ATTRIBUTE = "fillplane.caller";

  /** Who makes the request of {@code context}; known once {@link Admission} has let it in. */
  static Caller of(Context context) {
    return Optional.<Caller>ofNullable(context.attribute(ATTRIBUTE)).orElse(LOCAL);
  }

  /** Notes who makes the request. */
  static void note(Context context, Key key) {
    context.attribute(ATTRIBUTE, new Caller(key.id(), key.tenant()));
    Note.of(context).key(key.id());
  }
}
