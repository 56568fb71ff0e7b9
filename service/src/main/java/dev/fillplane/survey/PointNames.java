package dev.fillplane.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Names of points and their numbers, counted from 0 in the order of the first reading. */
abstract class PointNames {

  /** The number of the point called {@code name}, or -1. */
  abstract int find(String name);

  /** The name of the point {@code number}. */
  abstract String name(int number);

  /** How many points there are. */
  abstract int count();

  /** Points that are named by their row, from 1; holds no strings. */
  static PointNames rows(int rows) {
    return new Rows(rows);
  }

  private static final class Rows extends PointNames {

    private final int rows;

    Rows(int rows) {
      this.rows = rows;
    }

    @Override
    int find(String name) {
      if (!name.matches("[1-9][0-9]{0,8}")) {
        return -1;
      }
      int row = Integer.parseInt(name);
      return row <= rows ? row - 1 : -1;
    }

    @Override
    String name(int number) {
      return String.valueOf(number + 1);
    }

    @Override
    int count() {
      return rows;
    }
  }

  /** Points that are named by the caller; numbers are given out as names come in. */
  static final class Given extends PointNames {

    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<String> names = new ArrayList<>();

    /** The number of the point called {@code name}, a new one if it was not met before. */
    int number(String name) {
      Integer known = numbers.putIfAbsent(name, names.size());
      if (known != null) {
        return known;
      }
      names.add(name);
      return names.size() - 1;
    }

    @Override
    int find(String name) {
      return numbers.getOrDefault(name, -1);
    }

    @Override
    String name(int number) {
      return names.get(number);
    }

    @Override
    int count() {
      return names.size();
    }
  }
}
