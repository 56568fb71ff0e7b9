package dev.fillplane.app;

import dev.fillplane.web.key.Key;
import dev.fillplane.web.key.KeyFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Option;

/** The file of keys that a command works on. */
final class KeyFileOption {

  @Option(
      names = "--keys",
      required = true,
      paramLabel = "FILE",
      description = "The file of keys, as serve has it.")
  private Path file;

  /** Its keys; none where there is no file yet. */
  List<Key> read() throws IOException {
    return Files.exists(file) ? KeyFile.read(file) : List.of();
  }

  void write(List<Key> keys) throws IOException {
    KeyFile.write(file, keys);
  }
}
