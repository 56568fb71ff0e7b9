package dev.fillplane.web;

import dev.fillplane.job.JobSettings;
import dev.fillplane.job.StoreAddress;
import java.nio.file.Path;

/**
 * How the server runs.
 *
 * @param host address to listen on
 * @param port port to listen on; 0 for any free one
 * @param bodyBytes largest body, where the memory bears it
 * @param capacity how much heavy work is taken at once
 * @param pace how slow callers may be
 * @param stopping how it ends
 * @param requestsPerMinute requests that one caller may make in a minute; 0 for no limit
 * @param access who may call
 * @param jobs how jobs are worked on
 */
public record Settings(
    String host,
    int port,
    long bodyBytes,
    Capacity capacity,
    Pace pace,
    Stopping stopping,
    int requestsPerMinute,
    Access access,
    JobSettings jobs) {

  /** Where jobs are kept unless told. */
  public static final String DATA = "fillplane-data";

  /** Largest body unless told: 64 MB. */
  public static final long BODY_BYTES = 64_000_000;

  /** Listens on {@code host} and {@code port}, all else as usual. */
  public static Settings at(String host, int port) {
    JobSettings jobs = JobSettings.in(StoreAddress.folder(Path.of(DATA)));
    return new Settings(
        host,
        port,
        BODY_BYTES,
        Capacity.usual(),
        Pace.usual(),
        Stopping.usual(),
        0,
        Access.local(),
        jobs);
  }

  /** The largest body that is taken: no more than may be held of all together. */
  long largestBody() {
    return Math.min(bodyBytes, capacity.heldBytes());
  }

  /** The same with another largest body. */
  public Settings withBodyBytes(long bytes) {
    return new Settings(
        host, port, bytes, capacity, pace, stopping, requestsPerMinute, access, jobs);
  }

  /** The same with more or less heavy work at once. */
  public Settings withCapacity(Capacity other) {
    return new Settings(
        host, port, bodyBytes, other, pace, stopping, requestsPerMinute, access, jobs);
  }

  /** The same for faster or slower callers. */
  public Settings withPace(Pace other) {
    return new Settings(
        host, port, bodyBytes, capacity, other, stopping, requestsPerMinute, access, jobs);
  }

  /** The same with another end. */
  public Settings withStopping(Stopping other) {
    return new Settings(
        host, port, bodyBytes, capacity, pace, other, requestsPerMinute, access, jobs);
  }

  /** The same with a limit on the requests of one caller. */
  public Settings withRequestsPerMinute(int count) {
    return new Settings(host, port, bodyBytes, capacity, pace, stopping, count, access, jobs);
  }

  /** The same for other callers. */
  public Settings withAccess(Access callers) {
    return new Settings(
        host, port, bodyBytes, capacity, pace, stopping, requestsPerMinute, callers, jobs);
  }

  /** The same with jobs worked on in another way. */
  public Settings withJobs(JobSettings other) {
    return new Settings(
        host, port, bodyBytes, capacity, pace, stopping, requestsPerMinute, access, other);
  }
}
