package dev.fillplane.finding;

/**
 * A computation was given up because its thread was interrupted, as Java's own waiting methods are.
 * Loops that may run for long ask before each round. The mark of the thread stays set, so that
 * whoever catches this by accident is stopped at the next round.
 */
public final class Stopped extends RuntimeException {

  private static final long serialVersionUID = 1;

  private Stopped() {
    super("the computation was stopped", null, false, false);
  }

  /**
   * Goes on unless somebody wants the thread to end its work.
   *
   * @throws Stopped if the thread is interrupted
   */
  public static void ifInterrupted() {
    if (Thread.currentThread().isInterrupted()) {
      throw new Stopped();
    }
  }
}
