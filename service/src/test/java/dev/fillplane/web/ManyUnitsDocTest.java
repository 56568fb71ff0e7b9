package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The script of the page runs as it stands there. */
@Timeout(300)
class ManyUnitsDocTest {

  private static final Path PAGE = Path.of("..", "docs", "integrations", "many-units.md");

  @TempDir private Path folder;

  private record Ended(int code, String told) {}

  @BeforeEach
  void tools() throws Exception {
    assumeTrue(run("bash", "-c", "command -v curl awk grep").code() == 0, "needs bash and curl");
  }

  @Test
  void plansItsUnits() throws Exception {
    Ended script = script(page(), RunningService.uri().toString());
    assertEquals(0, script.code(), script.told());
    List<JsonNode> plans = plans();
    assertEquals(200, plans.size());
    assertEquals("unit 200 (invented)", plans.get(199).get("reference").textValue());
    int bags = plans.stream().mapToInt(plan -> plan.at("/quantities/bags/order").intValue()).sum();
    assertEquals(bags + " bags for 200 of 200 units\n", script.told());
    assertTrue(bags > 400, "bags " + bags);
  }

  @Test
  void tellsUnitsWithoutAPlan() throws Exception {
    String faulty = page().replace("\\\"units\\\":\\\"metric\\\"", "\\\"units\\\":\\\"%s\\\"");
    faulty =
        faulty.replace(
            "(invented)\\\",\", unit", "(invented)\\\",\", (unit == 2 ? \"ell\" : \"us\"), unit");
    Ended script = script(faulty, RunningService.uri().toString(), "3");
    assertEquals(1, script.code(), script.told());
    assertTrue(script.told().contains("1 of 3 units have no plan; see problems.ndjson"));
    assertTrue(script.told().contains(" bags for 2 of 3 units"), script.told());
    String problem = Files.readString(folder.resolve("problems.ndjson"));
    assertTrue(problem.startsWith("{\"line\":2,"), problem);
  }

  @Test
  void failsWithoutAService() throws Exception {
    Ended script = script(page(), "http://127.0.0.1:1", "3");
    assertEquals(7, script.code(), script.told());
  }

  private static String page() throws IOException {
    Matcher block =
        Pattern.compile("```bash\n(.*?)```", Pattern.DOTALL).matcher(Files.readString(PAGE));
    assertTrue(block.find());
    return block.group(1);
  }

  private List<JsonNode> plans() throws IOException {
    try (Stream<String> lines = Files.lines(folder.resolve("plans.ndjson"))) {
      return lines.map(line -> Trees.of(line.getBytes(StandardCharsets.UTF_8))).toList();
    }
  }

  private Ended script(String text, String... arguments) throws Exception {
    Path file = folder.resolve("many-units.sh");
    Files.writeString(file, text);
    String[] command = new String[arguments.length + 2];
    command[0] = "bash";
    command[1] = file.toString();
    System.arraycopy(arguments, 0, command, 2, arguments.length);
    return run(command);
  }

  private Ended run(String... command) throws IOException, InterruptedException {
    File told = folder.resolve("told").toFile();
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(told)
            .start();
    int code = process.waitFor();
    return new Ended(code, Files.readString(told.toPath(), StandardCharsets.UTF_8));
  }
}
