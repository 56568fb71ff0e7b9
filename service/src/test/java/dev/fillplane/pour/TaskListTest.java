package dev.fillplane.pour;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class TaskListTest {

  @Test
  void theWayBackBelongsToTheWayThere() {
    TaskList tasks = new TaskList(2);
    tasks.note(0, Role.CARRY_AND_POUR, 0, 10, 45);
    tasks.note(0, Role.CARRY_AND_POUR, 0, 45, 60);
    tasks.note(0, Role.CARRY_AND_POUR, 1, 60, 95);
    assertEquals(
        List.of(
            new Task(Role.CARRY_AND_POUR, OptionalInt.of(1), 10, 60),
            new Task(Role.CARRY_AND_POUR, OptionalInt.of(2), 60, 95)),
        tasks.of(0));
    assertEquals(List.of(), tasks.of(1));
  }

  @Test
  void washingUpIsForNoBatch() {
    TaskList tasks = new TaskList(1);
    tasks.note(0, Role.CLEAN, 3, 0, 60);
    assertEquals(List.of(new Task(Role.CLEAN, OptionalInt.empty(), 0, 60)), tasks.of(0));
  }
}
