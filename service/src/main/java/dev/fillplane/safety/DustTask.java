package dev.fillplane.safety;

/** Work that raises quartz dust. */
public enum DustTask {
  /** With a grinder held in the hands. */
  HAND_GRINDING,
  /** With a walk-behind grinder. */
  FLOOR_GRINDING,
  /** Opening bags and mixing powder. */
  BAG_MIXING,
  /** Cleaning floor, tools and clothes. */
  CLEAN_UP
}
