package dev.fillplane.web;

import io.javalin.http.Context;

/** Who owns the jobs that a request makes and may see. */
@FunctionalInterface
interface Tenant {

  /** Where nobody is asked for a key, all callers are one. */
  Tenant LOCAL = context -> "local";

  /** The id of the caller's key. */
  String of(Context context);
}
