package dev.fillplane.pour;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Keeps what each person does; the way back with a bucket belongs to the way there. */
final class TaskList implements Diary {

  private final List<List<Task>> tasks = new ArrayList<>();

  TaskList(int people) {
    for (int i = 0; i < people; i++) {
      tasks.add(new ArrayList<>());
    }
  }

  @Override
  public void note(int person, Role role, int batch, double from, double to) {
    List<Task> own = tasks.get(person);
    OptionalInt number = role == Role.CLEAN ? OptionalInt.empty() : OptionalInt.of(batch + 1);
    Task last = own.isEmpty() ? null : own.get(own.size() - 1);
    if (last != null && last.role() == role && last.batch().equals(number) && last.to() == from) {
      own.set(own.size() - 1, new Task(role, number, last.from(), to));
    } else {
      own.add(new Task(role, number, from, to));
    }
  }

  /** The work of a person, in its order. */
  List<Task> of(int person) {
    return List.copyOf(tasks.get(person));
  }
}
