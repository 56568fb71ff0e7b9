package dev.fillplane.bench;

import dev.fillplane.openapi.Contract;
import dev.fillplane.web.json.Json;
import java.io.IOException;
import java.util.stream.Stream;

/**
 * The service under load, on this machine together with its callers: how long it takes to start,
 * plans for one caller, four and too many, light operations against an echo of the same JSON, and
 * light operations beside heavy ones. About four minutes; wants the built jar.
 */
public final class Load {

  private static final Contract CONTRACT = Contract.load();

  private Load() {}

  /** Takes options of the virtual machine for the starts, such as that of an archive of classes. */
  public static void main(String[] args) throws IOException, InterruptedException {
    Report report = new Report("load", "The service under load");
    report.add(Starts.measure(Stream.of(args).filter(arg -> arg.startsWith("-X")).toList()));
    report.add(EchoLoad.measure());
    report.add(PlanLoad.measure());
  }

  /** The bytes of an example of the contract. */
  static byte[] example(String name) {
    return Json.canonical(CONTRACT.example(name));
  }
}
