package dev.fillplane.web;

import dev.fillplane.quantity.UnitSystem;
import java.util.Optional;

/**
 * One operation that takes a body and computes an answer.
 *
 * @param path where it is posted to
 * @param schema the schema of its body in the contract
 * @param request the record of its body
 * @param mediaType what it answers with
 * @param work computes the answer: a record for JSON, a text for anything else
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
   * @param layers the query parameter of that name, if told
   */
  record Caller(UnitSystem units, String inputDigest, Optional<String> layers) {}

  /** Computes an answer. */
  @FunctionalInterface
  interface Work<Q> {
    Object answer(Q request, Caller caller);
  }
}
