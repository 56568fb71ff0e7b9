package dev.fillplane.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class MethodsTest {

  private static final String HEADING = "## ";

  /** A caller who finds an id in a plan finds its formula under that heading. */
  @Test
  void thePageOfFormulasHasAHeadingForEachMethodAndNoOther() throws IOException {
    List<String> headings =
        Files.readAllLines(Path.of("../docs/formulas.md")).stream()
            .filter(line -> line.startsWith(HEADING))
            .map(line -> line.substring(HEADING.length()))
            .toList();
    assertEquals(Methods.ids(), headings);
  }

  @Test
  void noIdComesTwice() {
    assertEquals(Methods.ids().stream().distinct().toList(), Methods.ids());
  }
}
