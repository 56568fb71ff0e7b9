package dev.fillplane.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Jobs in a file. */
class JobsOnH2Test extends JobsSuite {

  @TempDir private Path folder;

  @Override
  StoreAddress store() {
    return StoreAddress.folder(folder);
  }

  /** Nothing is written late: the process ends with the very next statement after the answer. */
  @Test
  void aNodeIsGoneInTheMomentItTookAJob() throws Exception {
    String id = HaltingNode.run(folder);
    Jobs next = node(CountingPlanner.free());
    next.resume();
    assertEquals(5, ended(next, id).done());
    everyUnitOnce(next, id, 5);
  }
}
