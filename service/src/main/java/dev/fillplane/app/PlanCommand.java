package dev.fillplane.app;

import dev.fillplane.web.PlanDesk;
import dev.fillplane.web.PlanLines;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/**
 * Plans requests from files: a JSON file holds one, an NDJSON file (by its name) one in each line.
 * Each gives one line: its plan, or the problem that there is none.
 */
@Command(
    name = "plan",
    description = "Plans the requests of files, one line of JSON for each.",
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:every request has its plan",
      "1:at least one has none; its line is a problem, as that of a stream",
      "2:a file cannot be read, or the command is wrong"
    })
final class PlanCommand implements Callable<Integer> {

  @Parameters(arity = "1..*", paramLabel = "FILE", description = "JSON or NDJSON files.")
  private List<Path> files;

  private final PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
  private int failed;

  @Override
  public Integer call() {
    PlanDesk desk = new PlanDesk();
    try (PlanLines lines = PlanLines.local(desk)) {
      for (Path file : files) {
        if (file.toString().endsWith(".ndjson")) {
          planLines(lines, file);
        } else {
          PlanDesk.Reply reply = desk.plan(Files.readAllBytes(file));
          print(reply.json(), reply.planned(), file.toString());
        }
      }
    } catch (IOException e) {
      System.err.println("Cannot read " + e.getMessage());
      return 2;
    } finally {
      out.flush();
    }
    return failed == 0 ? 0 : 1;
  }

  private void planLines(PlanLines lines, Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      lines.answer(
          in, answer -> print(answer.json(), answer.planned(), file + " line " + answer.line()));
    }
  }

  private void print(byte[] line, boolean planned, String name) {
    out.writeBytes(line);
    out.write('\n');
    if (!planned) {
      failed++;
      System.err.println(name + " cannot be planned; its line says why.");
    }
  }
}
