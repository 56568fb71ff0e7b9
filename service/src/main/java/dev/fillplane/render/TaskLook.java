package dev.fillplane.render;

import dev.fillplane.pour.Role;

/** How the pieces of work look: told apart in grey, each with a short word. */
enum TaskLook {
  MIX(Role.MIX, "mix", "#24425c", "#fff", ""),
  MEASURE_WATER(Role.MEASURE_WATER, "water", "#bcdcea", "#111", ""),
  CARRY_AND_POUR(Role.CARRY_AND_POUR, "pour", "#fff", "#111", ""),
  RAKE(Role.RAKE, "rake", "#f2dcae", "#111", "M0 7L7 0"),
  SPIKE_ROLL(Role.SPIKE_ROLL, "roll", "#d5e6cf", "#111", "M0 3.5H7M3.5 0V7"),
  CLEAN(Role.CLEAN, "wash", "#ccc", "#111", "M0 0L7 7M0 7L7 0");

  private final Role role;
  private final String word;
  private final String ground;
  private final String ink;
  private final String hatch;

  TaskLook(Role role, String word, String ground, String ink, String hatch) {
    this.role = role;
    this.word = word;
    this.ground = ground;
    this.ink = ink;
    this.hatch = hatch;
  }

  static TaskLook of(Role role) {
    for (TaskLook look : values()) {
      if (look.role == role) {
        return look;
      }
    }
    throw new IllegalArgumentException("no look of " + role);
  }

  String word() {
    return word;
  }

  /** The colour of a text on it. */
  String ink() {
    return ink;
  }

  /** Whether a text on it needs a ground of its own. */
  boolean isHatched() {
    return !hatch.isEmpty();
  }

  /** What fills it, in a picture whose patterns have names of this beginning. */
  String fill(String ids) {
    return isHatched() ? "url(#" + id(ids) + ")" : ground;
  }

  private String id(String ids) {
    return ids + "-" + word;
  }

  /** The pattern that fills it, if any. */
  void define(Markup svg, String ids) {
    if (!isHatched()) {
      return;
    }
    svg.open("pattern", "id", id(ids), "width", 7, "height", 7, "patternUnits", "userSpaceOnUse");
    svg.leaf("rect", "width", 7, "height", 7, "fill", ground);
    svg.leaf("path", "d", hatch, "fill", "none", "stroke", "#333", "stroke-width", 0.8);
    svg.close("pattern");
  }
}
