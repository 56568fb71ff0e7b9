package dev.fillplane.job;

/** A key that is in use. */
public final class KeyConflict extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final boolean stillRunning;

  KeyConflict(boolean stillRunning) {
    super("the key is in use", null, false, false);
    this.stillRunning = stillRunning;
  }

  /** Whether the request with it is still being taken; else it was another request. */
  public boolean stillRunning() {
    return stillRunning;
  }
}
