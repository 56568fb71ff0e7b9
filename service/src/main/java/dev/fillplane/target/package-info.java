/**
 * The plane that the finished pour should lie in: the lowest level, the plane of least fill, or
 * what the caller states.
 *
 * <p><em>High points</em> are the points of the sampled floor and the readings that it has to
 * cover. Elevations and depths are metres, slopes metres of rise a metre on plan.
 */
package dev.fillplane.target;
