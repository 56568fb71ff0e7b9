package dev.fillplane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Elements in rounds that double, each in the order of the list. */
class InRoundsTest {

  private static final int COUNT = 64_000;

  @Test
  void everyElementOnce() {
    List<Integer> ordered = InRounds.of(numbers(COUNT));
    assertEquals(numbers(COUNT), ordered.stream().sorted().toList());
  }

  @Test
  void roundsDoubleAndKeepTheOrder() {
    List<Integer> ordered = InRounds.of(numbers(COUNT));
    List<Integer> starts =
        IntStream.range(1, COUNT).filter(i -> ordered.get(i) < ordered.get(i - 1)).boxed().toList();
    assertEquals(6, starts.size());
    for (int i = 1; i < starts.size(); i++) {
      assertEquals(2, (double) starts.get(i) / starts.get(i - 1), 0.2);
    }
  }

  @Test
  void elementsOfARoundLieApart() {
    List<Integer> ordered = InRounds.of(numbers(COUNT));
    int last =
        IntStream.range(1, COUNT).filter(i -> ordered.get(i) < ordered.get(i - 1)).max().getAsInt();
    int widest =
        IntStream.range(last + 1, COUNT)
            .map(i -> ordered.get(i) - ordered.get(i - 1))
            .max()
            .getAsInt();
    assertTrue(widest < 40, "a gap of " + widest);
  }

  @Test
  void aShortListStaysAsItIs() {
    assertEquals(numbers(900), InRounds.of(numbers(900)));
  }

  private static List<Integer> numbers(int count) {
    return IntStream.range(0, count).boxed().toList();
  }
}
