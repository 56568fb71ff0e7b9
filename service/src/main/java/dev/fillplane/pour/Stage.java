package dev.fillplane.pour;

/** What a crew waits for. */
enum Stage {
  MIXING,
  PEOPLE,
  BARRELS
}
