package dev.fillplane.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Jobs in a file. */
class JobsOnH2Test extends JobNodes implements UnitsOfJobs, KeysOfJobs, NodesOfJobs {

  @TempDir private Path folder;

  @Override
  StoreAddress store() {
    return StoreAddress.folder(folder);
  }

  /** No worker can be made: the file is free again, for this node or another. */
  @Test
  void whatFailsHalfWayLeavesTheFileFree() throws Exception {
    Jobs broken = node(CountingPlanner.free(), Clock.systemUTC(), 0);
    assertThrows(
        IllegalArgumentException.class,
        () ->
            broken.accept(
                JobOwner.of("me"), USUAL, units(1), Optional.empty(), status -> new byte[0]));
    Path file = folder.resolve("jobs.mv.db");
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      assertNotNull(channel.tryLock());
    }
  }

  /** Where the file lies is for the log, not for callers. */
  @Test
  void aStoreThatFailsDoesNotTellItsPath() throws Exception {
    Files.writeString(folder.resolve("jobs.mv.db"), "no file of jobs");
    StoreException e = assertThrows(StoreException.class, () -> Database.open(store(), 1));
    assertFalse(e.getMessage().contains(folder.toString()), e.getMessage());
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
