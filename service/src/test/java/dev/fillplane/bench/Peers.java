package dev.fillplane.bench;

import com.sun.management.OperatingSystemMXBean;
import dev.fillplane.bench.Peer.Timed;
import dev.fillplane.pour.CrewCase;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.function.DoubleSupplier;
import java.util.stream.DoubleStream;

/**
 * The kernels against the same work with NumPy and SciPy: same data, answers compared, in turns on
 * the same machine, one thread. About two minutes; wants python3 with both.
 */
public final class Peers {

  private static final OperatingSystemMXBean SYSTEM =
      ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

  private final Peer peer;
  private volatile double kept;
  private final Table times =
      Table.of(
          "",
          "CPU here, ms",
          "CPU of the peer, ms",
          "clock here",
          "clock of the peer",
          "answers differ by");
  private final Table goals = Table.of("goal", "measured", "wanted", "");

  private Peers(Peer peer) {
    this.peer = peer;
  }

  /** Takes no arguments. */
  public static void main(String[] args) throws IOException {
    Report report = new Report("peers", "The kernels against NumPy and SciPy");
    try (Peer peer = new Peer(Path.of("target", "peers"))) {
      Peers peers = new Peers(peer);
      peers.kriging(60);
      peers.kriging(200);
      peers.dense(100_000, 30, 5);
      peers.dense(1_000_000, 4, 2);
      peers.straightedge();
      peers.crew();
      report.add(
          "CPU of the process and time on the clock, medians of rounds that take turns, after a"
              + " warm-up.\n\n"
              + peers.times
              + "\n"
              + peers.goals);
    }
  }

  private void kriging(int readings) throws IOException {
    KrigingCase floor = new KrigingCase(readings);
    String name = "kriging-" + readings;
    double[] spots = joined(floor.spots().x(), floor.spots().y(), floor.spots().elevation());
    peer.leave(
        name,
        new double[] {KrigingCase.VARIANCE},
        new double[] {KrigingCase.SILL},
        new double[] {KrigingCase.RANGE},
        spots,
        joined(floor.x(), floor.y()));
    double share =
        compare(
            name,
            "kriging mean and deviation, " + readings + " readings, 10,000 cells",
            () -> Arrays.stream(floor.meanAndDeviation()).mapToDouble(Peers::mean).sum(),
            new int[] {100, 7, 10},
            1e-6);
    goals.atMost("kriging of " + readings + " readings against NumPy", share, 1.2, "");
  }

  private void dense(int readings, int warmUp, int rounds) throws IOException {
    DenseCase floor = new DenseCase(readings);
    String name = "dense-" + readings;
    peer.leave(name, floor.told(), floor.nodes(), new double[] {floor.corners()});
    double share =
        compare(
            name,
            "depth field of " + Table.figures(readings) + " readings; SciPy: linear only",
            floor::meanElevation,
            new int[] {warmUp, rounds, 1},
            2e-5);
    goals.atLeast(
        "SciPy linear against " + Table.figures(readings) + " readings", 1 / share, 4, "");
  }

  private void straightedge() throws IOException {
    EdgeCase floor = new EdgeCase();
    peer.leave("straightedge", floor.told());
    double share =
        compare(
            "straightedge",
            "straightedge of 3 m, 60 m2, 16 directions",
            floor::largestGap,
            new int[] {300, 5, 3},
            1e-9);
    goals.atLeast("NumPy against the straightedge", 1 / share, 10, "");
  }

  private void crew() throws IOException {
    CrewCase run = new CrewCase();
    peer.leave(
        "crew", Arrays.stream(run.told()).mapToObj(v -> new double[] {v}).toArray(double[][]::new));
    double share =
        compare("crew", "a run of 500 batches", run::end, new int[] {5_000, 5, 10}, 1e-6);
    goals.atLeast("Python against the simulation", 1 / share, 10, "");
  }

  /**
   * Compares the answers, then takes turns.
   *
   * @param counts runs to warm up, rounds, and runs of the peer in each round
   * @return the CPU here in parts of that of the peer
   */
  private double compare(
      String name, String what, DoubleSupplier work, int[] counts, double tolerance)
      throws IOException {
    for (int i = 0; i < counts[0]; i++) {
      kept = work.getAsDouble();
    }
    Timed[] here = new Timed[counts[1]];
    Timed[] there = new Timed[counts[1]];
    for (int round = 0; round < here.length; round++) {
      here[round] = timed(work);
      there[round] = peer.run(name, counts[2]);
    }
    double apart = Math.abs(here[0].answer() - there[0].answer());
    if (!(apart <= tolerance)) {
      throw new IllegalStateException(
          name + ": " + here[0].answer() + " here, " + there[0].answer() + " there");
    }
    double cpu = middle(here, true);
    double other = middle(there, true);
    times.row(what, cpu, other, middle(here, false), middle(there, false), "%.1e".formatted(apart));
    return cpu / other;
  }

  private static Timed timed(DoubleSupplier work) {
    long cpu = SYSTEM.getProcessCpuTime();
    long clock = System.nanoTime();
    double answer;
    int count = 0;
    do {
      answer = work.getAsDouble();
      count++;
    } while (System.nanoTime() - clock < 300_000_000);
    return new Timed(
        answer,
        (SYSTEM.getProcessCpuTime() - cpu) / 1e6 / count,
        (System.nanoTime() - clock) / 1e6 / count);
  }

  private static double middle(Timed[] rounds, boolean cpu) {
    return Stopwatch.middle(
        Arrays.stream(rounds).mapToDouble(cpu ? Timed::cpu : Timed::clock).toArray());
  }

  private static double mean(double[] values) {
    return Arrays.stream(values).average().orElse(0);
  }

  private static double[] joined(double[]... parts) {
    return Arrays.stream(parts).flatMapToDouble(DoubleStream::of).toArray();
  }
}
