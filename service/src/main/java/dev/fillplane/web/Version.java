package dev.fillplane.web;

import java.util.Optional;

/** The version of the service, as the jar tells it. */
public final class Version {

  /** The version; {@code development} outside a jar. */
  public static final String TEXT =
      Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
          .orElse("development");

  private Version() {}
}
