package dev.fillplane.pour;

import org.junit.jupiter.api.Test;

class ScratchTest {
  @Test
  void table() {
    for (int bags = 1; bags <= 2; bags++)
      for (double area : new double[] {1.0, 1.67, 3.0, 4.7}) {
        LaidFloor floor = EvenFloors.floor(40, area * bags, bags);
        for (int m = 1; m <= 3; m++)
          for (int p = m; p <= 2 * m + 4; p++)
            for (int b : new int[] {m, m + 1, 2 * m, 3 * m}) {
              Crew crew = Crew.of(p, m, b, bags);
              TaskTimes t = TaskTimes.of(crew, TestSheets.usual());
              Way way = new Way(p, m, b, 0);
              CrewRun run = CrewRun.of(floor, t, way, crew);
              Pace pace = Pace.of(t, way, bags, area * bags, false);
              Ages ages = Ages.of(floor, run);
              double iv = (run.placed(35) - run.placed(5)) / 30;
              System.out.printf(
                  "bags %d area %.2f p %d m %d b %d interval %.0f pace %.0f %s edge %.0f own %.0f roll %.0f%n",
                  bags,
                  area,
                  p,
                  m,
                  b,
                  iv,
                  pace.interval(),
                  pace.slowest(),
                  ages.edge(),
                  ages.batch(),
                  ages.roll());
            }
      }
  }
}
