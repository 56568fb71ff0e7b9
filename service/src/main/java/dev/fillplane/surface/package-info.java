/**
 * The floor between the readings, with how sure it is, and the floor sampled on cells.
 *
 * <p><em>Deviation</em> is that of the floor, without the error of a reading.
 */
package dev.fillplane.surface;
