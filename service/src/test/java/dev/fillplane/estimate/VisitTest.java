package dev.fillplane.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class VisitTest {

  private static final double HOUR = 3600;

  private static double halfDays(int people, double hours) {
    return new Visit(people, hours * HOUR, false).halfDays(4 * HOUR);
  }

  @Test
  void eachPersonIsPaidByHalfDaysBegun() {
    assertEquals(1, halfDays(3, 0.1));
    assertEquals(1, halfDays(3, 12));
    assertEquals(2, halfDays(3, 12.01));
    assertEquals(3, halfDays(1, 12));
    assertEquals(0, halfDays(3, 0));
  }
}
