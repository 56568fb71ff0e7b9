package dev.fillplane.web;

import dev.fillplane.web.key.Scope;
import java.util.EnumSet;
import java.util.Set;

/**
 * Which scopes of a key open which operation; the contract says the same as {@code x-scopes}. What
 * is not named here wants {@code calculate}.
 */
final class Operations {

  private static final String JOBS = "/v1/jobs";
  private static final String JOB_UPLOADS = "/v1/job-uploads";

  private static final Set<String> LIGHT =
      Set.of(
          "/v1/bag-counts",
          "/v1/mix-checks",
          "/v1/air-checks",
          "/v1/pour-checks",
          "/v1/lifting-checks",
          "/v1/dust-checks");

  private static final Set<String> CATALOGUES =
      Set.of(
          "/v1/materials",
          "/v1/substrates",
          "/v1/coverings",
          "/v1/tolerances",
          "/v1/tolerances/{id}",
          "/v1/methods",
          "/v1/capabilities");

  private Operations() {}

  /** The scopes of which one is enough for the operations of {@code path}. */
  static Set<Scope> scopes(String path) {
    if (CATALOGUES.contains(path)) {
      return EnumSet.allOf(Scope.class);
    }
    if (LIGHT.contains(path)) {
      return EnumSet.of(Scope.CALCULATE, Scope.BROWSER);
    }
    boolean jobs = path.equals(JOBS) || path.startsWith(JOBS + "/") || path.equals(JOB_UPLOADS);
    return EnumSet.of(jobs ? Scope.JOBS : Scope.CALCULATE);
  }

  /** The calculations that are light enough for pages; they are posted to. */
  static Set<String> light() {
    return LIGHT;
  }

  /** The catalogues; they are read by GET. */
  static Set<String> catalogues() {
    return CATALOGUES;
  }
}
