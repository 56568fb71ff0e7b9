package dev.fillplane.estimate;

/** How an item is counted or measured when it is sold; decides which units fit. */
enum Sold {
  /** In bags; whole ones. */
  BAGS,
  /** In pieces; whole ones. */
  PIECES,
  /** By length; inside m. */
  LENGTH,
  /** By area; inside m2. */
  AREA,
  /** By volume; inside m3. */
  VOLUME,
  /** By mass; inside kg. */
  MASS,
  /** By working time; inside s. */
  WORK,
  /** By days of hire; inside days. */
  HIRE
}
