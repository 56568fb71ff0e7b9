package dev.fillplane.pour;

/** When the batches of a bay are mixed and placed, in seconds from the first water of the bay. */
interface BatchTimes {

  /** When water meets powder. */
  double firstWater(int batch);

  /** When it is on the floor; not before the batch before it. */
  double placed(int batch);
}
