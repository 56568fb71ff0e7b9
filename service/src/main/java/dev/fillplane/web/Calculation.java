package dev.fillplane.web;

import com.fasterxml.jackson.databind.JsonNode;
import dev.fillplane.quantity.UnitSystem;
import java.util.Optional;

/**
 * One operation that takes a body and computes an answer.
 *
 * @param path where it is posted to
 * @param schema the schema of its body in the contract
 * @param request the record of its body
 * @param mediaType what it answers with
 * @param work computes the answer: a record for JSON, a text or bytes for anything else
 */
record Calculation<Q>(
    String path, String schema, Class<Q> request, String mediaType, Work<Q> work) {

  static final String JSON = "application/json";

  static <Q> Calculation<Q> json(String path, String schema, Class<Q> request, Work<Q> work) {
    return new Calculation<>(path, schema, request, JSON, work);
  }

  /**
   * What an answer needs to know beside the request.
   *
   * @param body the request as it came
   * @param query the query parameters
   */
  record Caller(UnitSystem units, JsonNode body, Query query) {

    /** What tells one request from another; worked out at each call. */
    String inputDigest() {
      return Body.digest(body);
    }
  }

  /** The query parameters of a call. */
  @FunctionalInterface
  interface Query {

    /** Of a call without any. */
    Query NONE = name -> Optional.empty();

    /** The parameter of a name, if it is told. */
    Optional<String> told(String name);
  }

  /** Computes an answer. */
  @FunctionalInterface
  interface Work<Q> {
    Object answer(Q request, Caller caller);
  }
}
