package dev.fillplane.job;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

/** Jobs in a file. */
class JobsOnH2Test extends JobsSuite {

  @TempDir private Path folder;

  @Override
  StoreAddress store() {
    return StoreAddress.folder(folder);
  }
}
