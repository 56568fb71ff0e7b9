package dev.fillplane.plan;

import java.util.List;

/**
 * Where the numbers come from.
 *
 * @param version of the service
 * @param inputDigest SHA-256 of the request in a canonical form, in hexadecimal
 * @param methods ids of the methods used, as in the catalogue of methods
 */
public record Computed(String version, String inputDigest, List<String> methods) {

  /** Copies the ids. */
  public Computed {
    methods = List.copyOf(methods);
  }
}
