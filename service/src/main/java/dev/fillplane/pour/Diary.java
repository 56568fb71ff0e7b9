package dev.fillplane.pour;

/** Hears of every piece of work as it is begun. */
@FunctionalInterface
interface Diary {

  /** Keeps nothing. */
  Diary NONE = (person, role, batch, from, to) -> {};

  /**
   * A piece of work.
   *
   * @param person who does it, from 0
   * @param batch the one it is for, from 0; of washing up any number
   */
  void note(int person, Role role, int batch, double from, double to);
}
