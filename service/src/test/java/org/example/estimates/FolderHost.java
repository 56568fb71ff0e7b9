package org.example.estimates;

import dev.fillplane.client.generated.model.Covering;
import dev.fillplane.client.generated.model.Crew;
import dev.fillplane.client.host.Corner;
import dev.fillplane.client.host.EstimateSink;
import dev.fillplane.client.host.Host;
import dev.fillplane.client.host.Measures;
import dev.fillplane.client.host.Opening;
import dev.fillplane.client.host.Price;
import dev.fillplane.client.host.PriceList;
import dev.fillplane.client.host.ProgressView;
import dev.fillplane.client.host.Reading;
import dev.fillplane.client.host.Room;
import dev.fillplane.client.host.Unit;
import dev.fillplane.client.host.UnitSource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Rooms and readings from two tables of a folder, line items into a third. */
public final class FolderHost implements Host {
  private final Path folder = Path.of(System.getProperty("estimates.folder", "."));

  @Override
  public int builtFor() {
    return VERSION;
  }

  @Override
  public String name() {
    return "folder";
  }

  @Override
  public UnitSource source() {
    return () -> rows("rooms.csv").stream().map(this::unit).iterator();
  }

  @Override
  public EstimateSink sink() {
    return new TableSink(folder.resolve("lines.csv"));
  }

  @Override
  public ProgressView progress() {
    return (done, of) -> System.out.println("units done: " + done);
  }

  @Override
  public Optional<PriceList> prices() {
    Map<String, Price> items =
        Map.of(
            "underlayment", Price.of("18.40", "{bag}"),
            "primer", Price.of("7.90", "L").inPacksOf("5"));
    Map<String, BigDecimal> hourlyRates = Map.of("usual", new BigDecimal("38.00"));
    return Optional.of(
        new PriceList("EUR", items, hourlyRates).withOwnCodes(Map.of("underlayment", "MAT-0815")));
  }

  private Unit unit(String[] row) {
    Opening exit = Opening.exit("way out", new Corner(0.5, 0), new Corner(1.4, 0));
    Room room =
        Room.rectangle(row[1], Double.parseDouble(row[2]), Double.parseDouble(row[3]), exit);
    List<Reading> readings =
        rows("readings.csv").stream()
            .filter(reading -> reading[0].equals(row[0]))
            .map(FolderHost::reading)
            .toList();
    return new Unit(row[0], Measures.METRIC, List.of(room), readings)
        .with(request -> request.covering(Covering.WOOD_GLUED))
        .with(request -> request.crew(new Crew().people(4).mixers(2).barrels(4)));
  }

  private static Reading reading(String[] row) {
    double x = Double.parseDouble(row[2]);
    double y = Double.parseDouble(row[3]);
    return new Reading("A", row[1], x, y, Double.parseDouble(row[4]));
  }

  /** The rows of a table below its head. */
  private List<String[]> rows(String table) {
    try (Stream<String> lines = Files.lines(folder.resolve(table))) {
      return lines.skip(1).map(line -> line.split(",")).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
