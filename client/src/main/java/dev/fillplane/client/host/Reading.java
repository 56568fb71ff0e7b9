package dev.fillplane.client.host;

/**
 * What was read on the staff at a point.
 *
 * @param setup name of the position of the laser; readings of one setup share its plane
 * @param point name of the point, the same where it was read from two setups
 * @param x place on plan
 * @param y place on plan
 * @param down distance from the plane of the laser down to the floor, millimetres or inches: larger
 *     is lower
 */
public record Reading(String setup, String point, double x, double y, double down) {}
