package dev.fillplane.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The clock of the machine jumps while the service works: Debian's libfaketime, where it is there
 * ({@code apt-get install faketime}), moves it for the process from outside.
 */
class ClockJumpsIT {

  private static final List<Path> PLACES =
      List.of(
          Path.of("/usr/lib/x86_64-linux-gnu/faketime/libfaketime.so.1"),
          Path.of("/usr/lib/aarch64-linux-gnu/faketime/libfaketime.so.1"));

  private static final int UNITS = 120;

  @TempDir private Path folder;

  @Test
  void aJobGoesOnThroughJumpsThereAndBack() throws Exception {
    Optional<Path> library = PLACES.stream().filter(Files::exists).findFirst();
    assumeTrue(library.isPresent(), "faketime is not installed");
    Path clock = Files.writeString(folder.resolve("clock"), "+0");
    Map<String, String> environment =
        Map.of(
            "LD_PRELOAD",
            library.get().toString(),
            "FAKETIME_TIMESTAMP_FILE",
            clock.toString(),
            "FAKETIME_NO_CACHE",
            "1",
            "FAKETIME_DONT_FAKE_MONOTONIC",
            "1");
    try (JarService service = JarService.on(folder.resolve("data"), environment)) {
      String job = service.upload(JarService.units(UNITS));
      service.untilDone(job, done -> done > UNITS / 4);
      Files.writeString(clock, "+3d");
      service.untilDone(job, done -> done > UNITS / 2);
      Files.writeString(clock, "-2d");
      service.untilDone(job, done -> done == UNITS);
      service.everyUnitOnce(job, UNITS);
      assertEquals(200, service.get("/health/ready").statusCode());
    }
  }
}
