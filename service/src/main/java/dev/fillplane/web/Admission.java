package dev.fillplane.web;

import dev.fillplane.web.key.Key;
import dev.fillplane.web.key.Scope;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Lets callers in: with a key where keys are asked for, for what the key allows, as often as is
 * granted. Everything below {@code /v1} wants it; what is outside tells nothing of any caller.
 */
final class Admission {

  private static final String CHALLENGE = "WWW-Authenticate";
  private static final String REALM = "Bearer realm=\"fillplane\"";
  private static final String BEARER = "Bearer ";

  private final Access access;
  private final RateLimit limit;

  Admission(Access access, RateLimit limit) {
    this.access = access;
    this.limit = limit;
  }

  void handle(JavalinConfig config) {
    new Cors(access).handle(config);
    config.routes.beforeMatched("/v1/*", this::admit);
  }

  private void admit(Context context) {
    if (access.keys().isEmpty()) {
      LocalHost.check(context, access);
      limit.count(context, context.ip());
      return;
    }
    Key key = key(context);
    Caller.note(context, key);
    if (!isOfItsPages(context, key)) {
      Cors.withdraw(context);
    }
    limit.count(context, key);
    checkScope(context, key);
  }

  /** A wrong secret and an unknown id get the same answer. */
  private Key key(Context context) {
    String told = context.header("Authorization");
    if (told == null) {
      throw refuse(REALM, "Send a key: Authorization: Bearer fp_...");
    }
    boolean bearer = told.regionMatches(true, 0, BEARER, 0, BEARER.length());
    Optional<Key> key =
        bearer
            ? access.keys().orElseThrow().find(told.substring(BEARER.length()).trim())
            : Optional.empty();
    return key.orElseThrow(
        () ->
            refuse(
                REALM + ", error=\"invalid_token\"",
                "This key is not valid; it is mistyped, revoked or of another service."));
  }

  private static Refusal refuse(String challenge, String detail) {
    return new Refusal(Problem.of(Problem.Kind.NO_KEY, detail), Map.of(CHALLENGE, challenge));
  }

  private static void checkScope(Context context, Key key) {
    Set<Scope> enough = Operations.scopes(context.endpoints().matchedHttpEndpoint().path);
    if (key.scopes().stream().noneMatch(enough::contains)) {
      throw tooNarrow(enough);
    }
    if (key.scopes().contains(Scope.BROWSER) && !isOfItsPages(context, key)) {
      throw Refusal.of(
          Problem.Kind.FORBIDDEN, "This key may be used only by pages of the origins it names.");
    }
  }

  private static boolean isOfItsPages(Context context, Key key) {
    String origin = context.header(Cors.ORIGIN);
    return origin != null && key.origins().contains(origin);
  }

  private static Refusal tooNarrow(Set<Scope> enough) {
    List<String> words =
        enough.stream().map(scope -> scope.name().toLowerCase(Locale.ROOT)).toList();
    String challenge =
        words.stream()
            .collect(
                Collectors.joining(" ", REALM + ", error=\"insufficient_scope\", scope=\"", "\""));
    return new Refusal(
        Problem.of(
            Problem.Kind.FORBIDDEN,
            "The key does not allow this; it needs the scope " + String.join(" or ", words) + "."),
        Map.of(CHALLENGE, challenge));
  }
}
