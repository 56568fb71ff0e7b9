package dev.fillplane.web.watch;

/**
 * A fault as it is logged: of which kind it is and where in the code, but not its own words, since
 * these may quote what a caller sent.
 */
public final class BareFault extends Exception {

  private static final long serialVersionUID = 1;
  private static final int MOST_CAUSES = 10;

  private BareFault(Throwable fault, BareFault cause) {
    super(fault.getClass().getName(), cause, false, true);
    setStackTrace(fault.getStackTrace());
  }

  /** A fault without its words. */
  public static BareFault of(Throwable fault) {
    return of(fault, MOST_CAUSES);
  }

  private static BareFault of(Throwable fault, int causes) {
    boolean more = causes > 0 && fault.getCause() != null;
    return new BareFault(fault, more ? of(fault.getCause(), causes - 1) : null);
  }
}
