package dev.fillplane.client.host;

import dev.fillplane.client.generated.model.Plan;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A host of units "unit 0", "unit 1" ..., that writes down what it is handed. */
final class TestHost implements Host, EstimateSink, ProgressView {
  final List<String> told = new ArrayList<>();
  final List<Integer> shown = new ArrayList<>();
  int version = Host.VERSION;
  int stopAfter = Integer.MAX_VALUE;
  int stopAfterLooks = Integer.MAX_VALUE;
  int failAt = Integer.MAX_VALUE;
  int sinkFailsAt = Integer.MAX_VALUE;
  volatile int taken;
  Optional<PriceList> prices = Optional.empty();
  private final int count;

  TestHost(int count) {
    this.count = count;
  }

  static Unit unit(int number) {
    Room hall =
        Room.rectangle("hall", 4, 3, Opening.exit("out", new Corner(0, 1), new Corner(0, 2)));
    List<Reading> readings =
        List.of(
            new Reading("A", "1", 0.3, 0.3, 1200),
            new Reading("A", "2", 3.7, 0.3, 1203),
            new Reading("B", "2", 3.7, 0.3, 1303),
            new Reading("B", "3", 0.3, 2.7, 1301));
    return new Unit("unit " + number, Measures.METRIC, List.of(hall), readings);
  }

  @Override
  public int builtFor() {
    return version;
  }

  @Override
  public String name() {
    return "test";
  }

  @Override
  public UnitSource source() {
    return new UnitSource() {
      @Override
      public Iterator<Unit> units() {
        return new Iterator<>() {
          @Override
          public boolean hasNext() {
            return taken < count;
          }

          @Override
          public Unit next() {
            return take();
          }
        };
      }

      @Override
      public OptionalInt count() {
        return OptionalInt.of(count);
      }
    };
  }

  private Unit take() {
    if (taken == failAt) {
      throw new IllegalStateException("no unit " + taken);
    }
    Unit unit = unit(taken);
    taken = taken + 1;
    return unit;
  }

  @Override
  public EstimateSink sink() {
    return this;
  }

  @Override
  public ProgressView progress() {
    return this;
  }

  @Override
  public Optional<PriceList> prices() {
    return prices;
  }

  @Override
  public void add(Unit unit, Estimate estimate) {
    if (told.size() == sinkFailsAt) {
      throw new IllegalStateException("the disk is full");
    }
    told.add(unit.reference() + ": " + estimate.lines().size() + " lines");
  }

  @Override
  public void add(Unit unit, Plan plan) {
    told.add(unit.reference() + ": plan of " + plan.getReference());
  }

  @Override
  public void refuse(Unit unit, Trouble trouble) {
    told.add(unit.reference() + ": " + trouble.kind());
  }

  @Override
  public void show(int done, OptionalInt of) {
    shown.add(done);
  }

  @Override
  public boolean cancelled() {
    return told.size() >= stopAfter || shown.size() >= stopAfterLooks;
  }
}
