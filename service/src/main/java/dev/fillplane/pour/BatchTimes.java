package dev.fillplane.pour;

/**
 * When the batches of a floor are mixed and placed, in seconds from the start of the work. Batches
 * count from 0 over all bays.
 */
interface BatchTimes {

  /** When water meets powder. */
  double firstWater(int batch);

  /** When it is on the floor; not before the batch before it. */
  double placed(int batch);

  /** When what it covers is raked and spike-rolled. */
  double rolled(int batch);
}
