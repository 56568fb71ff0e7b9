package dev.fillplane.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.Properties;

/** What is running: its version, and the commit it was built from. */
public final class Version {

  private static final Properties BUILD = build();

  /** The version; {@code development} outside a jar. */
  public static final String TEXT =
      Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
          .orElse("development");

  /** The commit, if it was built where one is known; ends in {@code -dirty} if it was changed. */
  public static final Optional<String> COMMIT = told("git.commit.id.describe");

  /** When that commit was made, in ISO 8601; the same at every build of it. */
  public static final Optional<String> COMMITTED = told("git.commit.time");

  private Version() {}

  /** All of it in a line. */
  public static String line() {
    return TEXT + COMMIT.map(commit -> " (" + commit + told(COMMITTED) + ")").orElse("");
  }

  private static String told(Optional<String> time) {
    return time.map(text -> ", " + text).orElse("");
  }

  private static Optional<String> told(String name) {
    return Optional.ofNullable(BUILD.getProperty(name)).filter(value -> !value.isBlank());
  }

  private static Properties build() {
    Properties build = new Properties();
    try (InputStream in = Version.class.getResourceAsStream("build.properties")) {
      if (in != null) {
        build.load(in);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return build;
  }
}
