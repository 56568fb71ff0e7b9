package dev.fillplane.app;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.fillplane.client.FillplaneClient;
import dev.fillplane.client.generated.ApiClient;
import dev.fillplane.client.generated.api.PicturesApi;
import dev.fillplane.client.generated.api.PlansApi;
import dev.fillplane.client.generated.model.Plan;
import dev.fillplane.client.generated.model.PlanRequest;
import dev.fillplane.openapi.Contract;
import dev.fillplane.web.Server;
import dev.fillplane.web.Settings;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Starts the service, plans an invented floor over HTTP, and tells the plan to a person. */
@Command(
    name = "demo",
    description = "Plans an invented sample floor and prints the plan.",
    mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {

  private static final String HOST = "127.0.0.1";

  @Option(names = "--units", defaultValue = "metric", description = "metric or us.")
  private String units;

  @Option(
      names = "--out",
      defaultValue = "fillplane-demo",
      description = "Folder for the plan, its picture and its sheet.")
  private Path out;

  @Override
  public Integer call() throws IOException {
    if (!units.equals("metric") && !units.equals("us")) {
      System.err.println("The units are metric or us.");
      return 2;
    }
    ObjectMapper json = ApiClient.createDefaultObjectMapper();
    PlanRequest request =
        json.convertValue(Contract.load().example("sample-" + units + ".json"), PlanRequest.class);
    try (Server server = Server.start(Settings.at(HOST, 0))) {
      FillplaneClient client =
          FillplaneClient.at(URI.create("http://" + HOST + ":" + server.port())).build();
      PlansApi plans = client.api(PlansApi::new);
      PicturesApi pictures = client.api(PicturesApi::new);
      Plan plan = client.call(() -> plans.makePlan(request));
      File map = client.call(() -> pictures.drawDepthMap(request, null));
      File sheet = client.call(() -> pictures.printPourSheet(request, null));
      PrintStream print = new PrintStream(System.out, true, StandardCharsets.UTF_8);
      new Summary(plan, request).print(print);
      Files.createDirectories(out);
      json.writerWithDefaultPrettyPrinter().writeValue(out.resolve("plan.json").toFile(), plan);
      Files.move(map.toPath(), out.resolve("depth-map.svg"), StandardCopyOption.REPLACE_EXISTING);
      Files.move(
          sheet.toPath(), out.resolve("pour-sheet.pdf"), StandardCopyOption.REPLACE_EXISTING);
      print.println();
      print.println("Plan:  " + out.resolve("plan.json"));
      print.println("Map:   " + out.resolve("depth-map.svg"));
      print.println("Sheet: " + out.resolve("pour-sheet.pdf"));
    }
    return 0;
  }
}
