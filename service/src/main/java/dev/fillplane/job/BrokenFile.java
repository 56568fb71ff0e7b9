package dev.fillplane.job;

import com.zaxxer.hikari.SQLExceptionOverride;
import java.sql.SQLException;
import java.util.Set;

/**
 * Tells the pool which connections to a file are of no more use. After a write that failed, as on a
 * full disk, H2 closes the file under all its connections; only a new one opens it again.
 */
final class BrokenFile implements SQLExceptionOverride {

  /** General error, input and output (twice), database closed, database called. */
  private static final Set<Integer> CODES = Set.of(50000, 90028, 90031, 90098, 90121);

  @java.lang.Override
  public Override adjudicate(SQLException e) {
    return CODES.contains(e.getErrorCode()) ? Override.MUST_EVICT : Override.CONTINUE_EVICT;
  }
}
