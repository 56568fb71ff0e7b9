package dev.fillplane.pour;

/** One run of a crew of four with two mixers over an even floor of 500 batches of a bag. */
public final class CrewCase {

  private static final int BATCHES = 500;
  private static final double AREA = 2;
  private static final Way WAY = new Way(4, 2, 4, 0);
  private static final Crew CREW = Crew.of(4, 2, 4, 1);

  private final LaidFloor floor = EvenFloors.floor(BATCHES, AREA, 1);
  private final TaskTimes times = TaskTimes.of(CREW, TestSheets.usual());

  /** When all is rolled and washed. */
  public double end() {
    return CrewRun.of(floor, times, WAY, CREW).end();
  }

  /** The numbers of the case, for other programs that run it. */
  public double[] told() {
    return new double[] {
      floor.batches(),
      WAY.people(),
      WAY.mixers(),
      WAY.barrels(),
      times.mixing(1),
      times.toFloor(),
      times.oneWay(),
      times.waterPerBag(),
      times.rake() * floor.area(0),
      times.roll() * floor.area(0),
      times.wash()
    };
  }
}
