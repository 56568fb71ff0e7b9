package dev.fillplane.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import dev.fillplane.quantity.UnitSystem;
import dev.fillplane.web.json.Json;
import dev.fillplane.web.json.Words;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

/** The body of a request before anybody looked at its sense. */
final class Body {

  private Body() {}

  /**
   * The bytes of the body.
   *
   * @throws Refusal if it is not JSON by its media type
   */
  static byte[] bytes(Context context) {
    return bytes(context, Calculation.JSON);
  }

  /**
   * The bytes of a body of the media type {@code wanted}.
   *
   * @throws Refusal if it says to be of another type or packed
   */
  static byte[] bytes(Context context, String wanted) {
    check(context, wanted);
    return context.bodyAsBytes();
  }

  /**
   * Checks the media type of a body.
   *
   * @throws Refusal if it says to be of another type or packed
   */
  static void check(Context context, String wanted) {
    String type = mediaType(context);
    if (type == null || !type.split(";", 2)[0].trim().equalsIgnoreCase(wanted)) {
      throw Refusal.of(
          Problem.Kind.UNSUPPORTED_MEDIA_TYPE, "Send the body as Content-Type: " + wanted + ".");
    }
    String encoding = context.header("Content-Encoding");
    if (encoding != null && !encoding.equalsIgnoreCase("identity")) {
      throw Refusal.of(
          Problem.Kind.UNSUPPORTED_MEDIA_TYPE, "Send the body without Content-Encoding.");
    }
  }

  /** The header as it came: asked for the type, the server fails on a charset it does not know. */
  static String mediaType(Context context) {
    return context.header("Content-Type");
  }

  /**
   * The tree of a body. A large one takes many times its bytes, so parse it only in a place of the
   * {@link Lane}.
   *
   * @throws Refusal if it is not JSON by its text
   */
  static JsonNode parse(byte[] body) {
    try {
      JsonNode tree = Json.tree(body);
      if (tree.isMissingNode()) {
        throw Refusal.of(Problem.Kind.NOT_JSON, "The body is empty.");
      }
      return tree;
    } catch (JsonProcessingException e) {
      throw notJson(e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Refuses a body that the parser does not take. */
  static Refusal notJson(JsonProcessingException e) {
    if (e instanceof StreamConstraintsException) {
      return Refusal.of(
          Problem.Kind.NOT_JSON,
          "The body nests deeper than "
              + Json.NESTING_LIMIT
              + " levels, or has a name or a number that is too long.");
    }
    return Refusal.of(Problem.Kind.NOT_JSON, where(e));
  }

  /** Says where and, for a property told twice, what; the parser's own words name classes. */
  private static String where(JsonProcessingException e) {
    String what =
        e.getOriginalMessage() != null && e.getOriginalMessage().startsWith("Duplicate field")
            ? "A property is told twice"
            : "The text stops being JSON";
    return e.getLocation() == null
        ? what + "."
        : what
            + " at line "
            + e.getLocation().getLineNr()
            + ", column "
            + e.getLocation().getColumnNr()
            + ".";
  }

  /** The units that a body asks for; metric where its schema would refuse what it says. */
  static UnitSystem units(JsonNode tree) {
    return told(tree).orElse(UnitSystem.METRIC);
  }

  /** The units that a body asks for, if it tells them. */
  static Optional<UnitSystem> told(JsonNode tree) {
    String told = tree.path("units").asText();
    return Arrays.stream(UnitSystem.values())
        .filter(system -> Words.of(system).equals(told))
        .findFirst();
  }

  /** SHA-256 of a text and the bytes of a body. */
  static String digest(String text, byte[] body) {
    MessageDigest sha = sha();
    sha.update(text.getBytes(StandardCharsets.UTF_8));
    return HexFormat.of().formatHex(sha.digest(body));
  }

  /** SHA-256 of the body with its properties in order, so that their order does not matter. */
  static String digest(JsonNode tree) {
    return HexFormat.of().formatHex(sha().digest(Json.canonical(tree)));
  }

  private static MessageDigest sha() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
