package dev.fillplane.fuzz;

import java.util.List;
import java.util.Random;

/** Tables of readings as people have them, some of them odd. */
final class CsvTexts {

  private static final List<String> HEADS =
      List.of(
          "point,x,y,reading", "setup;point;x;y;reading", "x,y,elevation", "point\tx\ty\treading");

  private static final List<String> CELLS =
      List.of(
          "1 1/2", "3/8\"", "-4 1/16", "1,5", "1.200,5", "1e3", "NaN", "", "x", "1/0", "-", "=1");

  private CsvTexts() {}

  static String make(Random random) {
    String head = Chance.of(HEADS, random);
    String separator = head.contains(";") ? ";" : head.contains("\t") ? "\t" : ",";
    int columns = head.split(separator, -1).length;
    StringBuilder text = new StringBuilder(Chance.of(random, "", "", "\uFEFF"));
    text.append(head).append('\n');
    for (int row = random.nextInt(12); row >= 0; row--) {
      for (int column = 0; column < columns; column++) {
        text.append(column == 0 ? "" : separator).append(cell(random));
      }
      text.append(Chance.of(random, "\n", "\n", "\r\n"));
    }
    return text.toString();
  }

  private static String cell(Random random) {
    return switch (random.nextInt(20)) {
      case 0 -> Chance.of(CELLS, random);
      case 1 -> Chance.of(HostileTexts.ALL, random);
      default -> String.valueOf(random.nextInt(2_000) / 10.0);
    };
  }
}
