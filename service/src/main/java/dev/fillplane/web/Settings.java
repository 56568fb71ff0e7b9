package dev.fillplane.web;

import dev.fillplane.job.JobSettings;
import dev.fillplane.job.StoreAddress;
import java.nio.file.Path;

/**
 * How the server runs.
 *
 * @param host address to listen on
 * @param port port to listen on; 0 for any free one
 * @param bodyBytes largest body
 * @param places calculations that may run at once
 * @param patienceSeconds how long a calculation waits for a place
 * @param requestsPerMinute requests that one caller may make in a minute; 0 for no limit
 * @param access who may call
 * @param jobs how jobs are worked on
 */
public record Settings(
    String host,
    int port,
    long bodyBytes,
    int places,
    long patienceSeconds,
    int requestsPerMinute,
    Access access,
    JobSettings jobs) {

  /** Where jobs are kept unless told. */
  public static final String DATA = "fillplane-data";

  /** Largest body unless told: 64 MB. */
  public static final long BODY_BYTES = 64_000_000;

  /** Listens on {@code host} and {@code port}, all else as usual. */
  public static Settings at(String host, int port) {
    int places = Math.max(2, Runtime.getRuntime().availableProcessors());
    JobSettings jobs = JobSettings.in(StoreAddress.folder(Path.of(DATA)));
    return new Settings(host, port, BODY_BYTES, places, 10, 0, Access.local(), jobs);
  }

  /** The same with another largest body. */
  public Settings withBodyBytes(long bytes) {
    return new Settings(
        host, port, bytes, places, patienceSeconds, requestsPerMinute, access, jobs);
  }

  /** The same with other places and another patience. */
  public Settings withPlaces(int count, long seconds) {
    return new Settings(host, port, bodyBytes, count, seconds, requestsPerMinute, access, jobs);
  }

  /** The same with a limit on the requests of one caller. */
  public Settings withRequestsPerMinute(int count) {
    return new Settings(host, port, bodyBytes, places, patienceSeconds, count, access, jobs);
  }

  /** The same for other callers. */
  public Settings withAccess(Access callers) {
    return new Settings(
        host, port, bodyBytes, places, patienceSeconds, requestsPerMinute, callers, jobs);
  }

  /** The same with jobs worked on in another way. */
  public Settings withJobs(JobSettings other) {
    return new Settings(
        host, port, bodyBytes, places, patienceSeconds, requestsPerMinute, access, other);
  }
}
