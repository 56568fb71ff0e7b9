package dev.fillplane.job;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Jobs of this node. The store is opened with the first job, or right after the start where jobs of
 * an earlier run or of another node may wait there; a store that cannot be reached is tried again.
 * Safe to share.
 */
public final class Jobs implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(Jobs.class);
  private static final Duration AGAIN = Duration.ofSeconds(5);

  private final JobSettings settings;
  private final UnitPlanner planner;
  private final CountDownLatch closed = new CountDownLatch(1);
  private Optional<Engine> engine = Optional.empty();

  /** Opens nothing yet. */
  public Jobs(JobSettings settings, UnitPlanner planner) {
    this.settings = settings;
    this.planner = planner;
  }

  /** Goes on with jobs that wait in the store, if there may be any. Does not wait for it. */
  public void resume() {
    if (settings.store().mayHoldJobs()) {
      Thread thread = new Thread(this::openAtLast, "jobs");
      thread.setDaemon(true);
      thread.start();
    }
  }

  private void openAtLast() {
    String told = "";
    try {
      do {
        try {
          engine();
          return;
        } catch (StoreException e) {
          if (!told.equals(e.getMessage())) {
            LOG.warn("{} {}", settings.store(), e.getMessage(), e.getCause());
            told = e.getMessage();
          }
        }
      } while (!closed.await(AGAIN.toMillis(), TimeUnit.MILLISECONDS));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /**
   * Takes a job: from now on it is worked on, whatever happens to this node.
   *
   * @param units in their order, each with a reference of its own
   * @param told makes what the caller is told
   * @throws KeyConflict if its key is in use
   * @throws StoreException if it cannot be kept
   */
  public TakenJob accept(
      JobOwner owner,
      JobTerms terms,
      List<UnitRequest> units,
      Optional<Keyed> key,
      Function<JobStatus, byte[]> told) {
    Engine open = engine();
    TakenJob accepted = open.store().accept(owner, terms, units, key, told);
    open.wake();
    return accepted;
  }

  /** How far a job of the caller is. */
  public Optional<JobStatus> status(String caller, String id) {
    return opened().flatMap(open -> open.store().status(caller, id));
  }

  /** Units of a job of the caller, from one on. */
  public Optional<List<UnitRow>> rows(String caller, String id, int from, int most) {
    return opened().flatMap(open -> open.store().rows(caller, id, from, most));
  }

  /** What the order for a job of the caller is made of. */
  public Optional<JobNeeds> needs(String caller, String id) {
    return opened().flatMap(open -> open.store().needs(caller, id));
  }

  /** Cancels a job of the caller, or forgets it where it has ended; false if there is none. */
  public boolean delete(String caller, String id) {
    return opened().map(open -> open.store().delete(caller, id)).orElse(false);
  }

  /**
   * Units that wait in the store or are being worked on, by all nodes; NaN where the store does not
   * answer or is not open.
   */
  public double waiting() {
    Optional<Engine> open = known();
    try {
      return open.isEmpty() ? Double.NaN : open.get().store().waiting();
    } catch (StoreException e) {
      return Double.NaN;
    }
  }

  private synchronized Optional<Engine> known() {
    return engine;
  }

  /** Forgets what has expired, now. */
  public void sweep() {
    opened().ifPresent(open -> open.store().sweep());
  }

  /** Empty where there cannot be any job yet. */
  private synchronized Optional<Engine> opened() {
    if (engine.isEmpty() && settings.store().mayHoldJobs()) {
      return Optional.of(engine());
    }
    return engine;
  }

  private synchronized Engine engine() {
    if (closed.getCount() == 0) {
      throw new StoreException("The service is stopping.", null);
    }
    if (engine.isEmpty()) {
      engine = Optional.of(Engine.start(settings, planner));
    }
    return engine.get();
  }

  /** Stops after the units that are being worked on; what is left goes on after the next start. */
  @Override
  public synchronized void close() {
    closed.countDown();
    engine.ifPresent(Engine::close);
    engine = Optional.empty();
  }
}
